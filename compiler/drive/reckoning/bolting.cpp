// What a screw bears and how far it is tightened, by the formulas of model/bolting.hpp.
#include "model/bolting.hpp"
#include "drive/figures.hpp"
#include "drive/inputs.hpp"
#include "drive/reckoning.hpp"
#include "model/describe.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::drive {

namespace {

using model::Measure;

struct Screw {
    const model::Thread* thread = nullptr;
    const model::Grade* grade = nullptr;
    const model::Friction* friction = nullptr;
};

template <class T> const T* named(const model::SharedList<T>& entries, const std::string& name) {
    const auto found = std::find_if(entries.begin(), entries.end(),
                                    [&](const T& entry) { return entry.name == name; });
    return found == entries.end() ? nullptr : &*found;
}

template <class T> const T* usual(const model::SharedList<T>& entries) {
    const auto found =
        std::find_if(entries.begin(), entries.end(), [](const T& entry) { return entry.usual; });
    return found == entries.end() ? nullptr : &*found;
}

template <class T> std::vector<std::string> names_of(const model::SharedList<T>& entries) {
    std::vector<std::string> names;
    for (const T& entry : entries)
        names.push_back(entry.name);
    return names;
}

// "class 8.8" is written `class-8.8` where it is declared, as on an item's line.
std::string hyphened(std::string words) {
    std::replace(words.begin(), words.end(), ' ', '-');
    return words;
}

// Takes a grade or a friction; false when the word is neither.
bool take(Screw& screw, const model::Model& model, const std::string& words) {
    const std::string name = hyphened(words);
    if (const auto* grade = named(model.grades, name)) {
        screw.grade = grade;
        return true;
    }
    if (const auto* friction = named(model.frictions, name)) {
        screw.friction = friction;
        return true;
    }
    return false;
}

std::variant<Screw, std::string> read_screw(const std::vector<std::string>& words,
                                            const model::Model& model) {
    if (words.empty())
        return "name a thread: `matchmark kinds threads` lists them";
    Screw screw{named(model.threads, words[0]), usual(model.grades), usual(model.frictions)};
    if (screw.thread == nullptr)
        return fmt::format("there is no thread `{}`{}", words[0],
                           did_you_mean(words[0], names_of(model.threads)));
    for (std::size_t i = 1; i < words.size(); ++i) {
        if (take(screw, model, words[i]))
            continue;
        if (i + 1 < words.size() && take(screw, model, words[i] + " " + words[i + 1])) {
            ++i;
            continue;
        }
        std::vector<std::string> known = names_of(model.grades);
        for (const model::Friction& friction : model.frictions)
            known.push_back(friction.name);
        return fmt::format("there is no grade and no friction `{}`{}", words[i],
                           did_you_mean(hyphened(words[i]), known));
    }
    if (screw.grade == nullptr || screw.friction == nullptr)
        return fmt::format("name a {}; none is usual here",
                           screw.grade == nullptr ? "grade" : "friction");
    return screw;
}

void add(Reckoning& into, std::string name, std::optional<double> value,
         std::initializer_list<std::string_view> units, std::string formula, std::string source) {
    if (value)
        into.figures.push_back(figure(std::move(name), shown_in(*value, units), std::move(formula),
                                      std::move(source)));
}

void add_strengths(Reckoning& into, const Screw& screw) {
    const model::Thread& thread = *screw.thread;
    const auto below = [&](std::string_view what, double pitches) {
        return fmt::format("{} = d - {} P", what, model::number_text(pitches));
    };
    const model::ThreadForm form = thread.form.value_or(model::ThreadForm{});
    add(into, "pitch diameter", model::pitch_diameter(thread), {"mm"}, below("d2", form.pitch_line),
        "ISO 724; ASME B1.1 for inch threads");
    add(into, "root diameter", model::root_diameter(thread), {"mm"}, below("d3", form.root),
        "ISO 724; ASME B1.1 for inch threads");
    add(into, "stress area", model::stress_area(thread), {"mm2"}, "As = pi/4 ((d2 + d3)/2)^2",
        "ISO 898-1, 9.1.6.1; ASME B1.1 for inch threads");
    add(into, "breaking force", model::breaking_force(thread, *screw.grade), {"N", "kN"},
        "Fm = Rm As", "ISO 898-1, 9.1");
    const bool stated = thread.breaks_at && screw.grade->usual;
    add(into, "breaking torque", model::breaking_torque(thread, *screw.grade), {"N.m"},
        stated ? "" : "MB = pi/16 d3min^3 X Rm",
        stated ? "stated with the thread; never one to tighten to"
               : "ISO 898-7; never one to tighten to");
    const double friction = screw.friction->coefficient;
    add(into, "usual preload", model::usual_preload(thread, *screw.grade, friction), {"N", "kN"},
        "F: pulled and twisted to 0.9 Rp", "VDI 2230-1");
    add(into, "usual torque", model::usual_torque(thread, *screw.grade, friction), {"N.m"},
        "M = F (0.159 P + 0.577 m d2 + m Db/2)", "VDI 2230-1");
}

// What the torque comes to beside the one that breaks the screw.
void add_share(Reckoning& into, const Screw& screw, double torque) {
    const auto breaking = model::breaking_torque(*screw.thread, *screw.grade);
    if (breaking && *breaking > 0)
        add(into, "of its breaking torque", 100 * torque / *breaking, {"%"}, "M / MB",
            "the two torques above");
}

} // namespace

Reckoned reckon_torque(const ReckonOptions& options, const model::Model& model) {
    auto read = read_screw(options.words, model);
    if (auto* wrong = std::get_if<std::string>(&read))
        return *wrong;
    const Screw screw = std::get<Screw>(read);
    const double friction = screw.friction->coefficient;
    Reckoning done;
    done.about = fmt::format("{}, {}, {} (friction {})", screw.thread->name, screw.grade->title,
                             screw.friction->title, model::number_text(friction));
    done.caution = "The maker's torque comes before any of these.";
    add_strengths(done, screw);
    if (done.figures.empty())
        return fmt::format("of thread `{}` too little is known: it needs `form`, `diameter` and "
                           "`pitch`",
                           screw.thread->name);
    if (!options.preload.empty() && !options.torque.empty())
        return "give --preload or --torque, not both: the one follows from the other";
    const bool asks_torque = !options.preload.empty();
    if (!asks_torque && options.torque.empty())
        return done;
    auto given = asks_torque ? read_given(options.preload, Measure::force, "--preload")
                             : read_given(options.torque, Measure::torque, "--torque");
    if (auto* wrong = std::get_if<std::string>(&given))
        return *wrong;
    const model::Quantity quantity = std::get<model::Quantity>(given);
    const auto found = asks_torque ? model::torque_for(*screw.thread, quantity.base, friction)
                                   : model::preload_for(*screw.thread, quantity.base, friction);
    if (!found)
        return fmt::format("thread `{}` says no `bears on`, and the head turns on it",
                           screw.thread->name);
    const std::string by = model::for_reader(quantity);
    if (asks_torque) {
        add(done, "torque for " + by, found, {"N.m"}, "M = F (0.159 P + 0.577 m d2 + m Db/2)",
            "VDI 2230-1");
    } else {
        add(done, "preload at " + by, found, {"N", "kN"}, "F = M / (0.159 P + 0.577 m d2 + m Db/2)",
            "VDI 2230-1");
    }
    add_share(done, screw, asks_torque ? *found : quantity.base);
    return done;
}

} // namespace matchmark::drive
