// Makes a device from the outside in: what is in the way of a thing, or ties it, was made before.
#include "capture/random_notes.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>

namespace matchmark::capture_test {

using model::ItemId;
using model::Role;

namespace {

// Words that no kind, verb or preposition has.
constexpr auto part_names = std::to_array<const char*>(
    {"alpha", "bravo", "charlie", "dorado", "echo", "foxtrot", "granite", "hamlet", "indigo",
     "juliett", "kilo", "lima", "marble", "novem", "oscar", "papa"});

struct TieKind {
    const char* keyword;
    const char* kind; // as the language has it
    const char* verb; // hold or join
};

constexpr auto tie_kinds = std::to_array<TieKind>({{"fastener", "screw", "holds"},
                                                   {"fastener", "screw", "holds"},
                                                   {"fastener", "clip", "holds"},
                                                   {"connector", "friction-plug", "joins"},
                                                   {"connector", "flip-lock-ribbon", "joins"},
                                                   {"bond", "double-sided-tape", "holds"}});

struct Made {
    std::string name;
    std::string head;
    std::vector<std::string> lines;
};

// What may be in the way: one thing, or a choice, or several.
void add_reach(Chance& chance, const std::vector<Made>& outer, Made& made) {
    if (outer.empty())
        return;
    const auto other = [&] { return outer[chance.below(outer.size())].name; };
    const std::size_t lines = chance.below(3);
    for (std::size_t i = 0; i < lines; ++i) {
        const std::string first = other();
        const std::string second = other();
        if (chance.one_in(4) && first != second)
            made.lines.push_back(fmt::format("behind {} or {}", first, second));
        else
            made.lines.push_back("under " + first);
    }
}

// Each a fifth longer than the one before, in mm.
std::size_t screw_length(std::size_t number) {
    std::size_t length = 6;
    for (std::size_t i = 0; i < number; ++i)
        length += std::max<std::size_t>(2, length / 5);
    return length;
}

} // namespace

std::string random_device_text(Chance& chance) {
    const std::size_t parts = 3 + chance.below(8);
    std::vector<Made> outer;
    for (std::size_t i = 0; i < parts; ++i) {
        Made part{part_names[i], "", {}};
        const char* kind = chance.one_in(5) ? " kind hinged-cover" : "";
        part.head = fmt::format("part {0} \"{0}\"{1}", part.name, kind);
        std::vector<Made> ties;
        for (std::size_t n = chance.below(3); n > 0; --n) {
            const TieKind& of = tie_kinds[chance.below(tie_kinds.size())];
            Made tie{fmt::format("{}-tie-{}", part.name, n), "", {}};
            const std::size_t count = of.kind == std::string("screw") ? 1 + chance.below(4) : 1;
            // No two screws of a device are of one size, nor easily mixed up.
            tie.head = of.kind == std::string("screw")
                           ? fmt::format("{} {} {} x screw M2 x {}, hexalobular 6", of.keyword,
                                         tie.name, count, screw_length(2 * i + n))
                           : fmt::format("{} {} kind {}", of.keyword, tie.name, of.kind);
            const bool to_other = i > 0 && chance.one_in(3);
            tie.lines.push_back(fmt::format("{} {} to {}", of.verb, part.name,
                                            to_other ? part_names[chance.below(i)] : "body"));
            add_reach(chance, outer, tie);
            const bool twin = std::any_of(ties.begin(), ties.end(), [&](const Made& known) {
                return known.head.substr(known.head.find(' ', 10)) ==
                       tie.head.substr(tie.head.find(' ', 10));
            });
            const bool same_kind = std::any_of(ties.begin(), ties.end(), [&](const Made& known) {
                return known.head.ends_with(of.kind) && tie.head.ends_with(of.kind);
            });
            if (!twin && !same_kind)
                ties.push_back(std::move(tie));
        }
        add_reach(chance, outer, part);
        outer.push_back(std::move(part));
        outer.insert(outer.end(), ties.begin(), ties.end());
    }
    std::string text = "device truth \"Truth\"\n\npart body \"body\"\n";
    for (const Made& made : outer) {
        text += made.head + "\n";
        for (const std::string& line : made.lines)
            text += "  " + line + "\n";
    }
    return text;
}

namespace {

// All acts outwards that can be done now.
Work possible(const bench::Bench& on, const bench::State& state) {
    Work acts;
    for (std::uint32_t i = 0; i < on.model->items.size(); ++i) {
        const model::Kind& kind = on.model->kind_of(ItemId{i});
        const model::StateId now = bench::state_of(on, state, ItemId{i}, 0, 0);
        for (std::size_t v = 0; v < kind.verbs.size(); ++v) {
            const model::Verb& verb = kind.verbs[v];
            const bench::Act act{ItemId{i}, static_cast<std::uint16_t>(v), {}, false};
            if (on.model->items[i].name != "body" && verb.to > now &&
                model::contains(verb.from, now) && !bench::refusal(on, state, act))
                acts.push_back(act);
        }
    }
    return acts;
}

} // namespace

Work random_job(Chance& chance, const model::Model& truth) {
    const bench::Bench on{&truth, 0};
    bench::State state = bench::assembled(on);
    std::vector<ItemId> parts;
    for (std::uint32_t i = 0; i < truth.items.size(); ++i) {
        if (truth.items[i].role == Role::part && truth.items[i].name != "body")
            parts.push_back(ItemId{i});
    }
    const ItemId target = parts[chance.below(parts.size())];
    Work work;
    while (bench::present(on, state, target)) {
        const Work acts = possible(on, state);
        if (acts.empty())
            break;
        bench::Act act = acts[chance.below(acts.size())];
        // Most people do not take off more than they must: what leads to the goal goes first.
        for (const bench::Act& next : acts) {
            if (next.item == target && !chance.one_in(4))
                act = next;
        }
        bench::perform(on, state, act);
        work.push_back(act);
    }
    return work;
}

std::string notes_of(Chance& chance, const model::Model& truth, const Work& work) {
    std::string text = "device: random thing\n";
    for (std::size_t i = 0; i < work.size(); ++i) {
        const model::Item& item = truth.item(work[i].item);
        const model::Kind& kind = truth.kind(item.kind);
        std::string verb = kind.verbs[work[i].verb].name;
        std::replace(verb.begin(), verb.end(), '-', ' ');
        std::string line = verb + " ";
        if (item.role == Role::part) {
            line += item.name;
            if (kind.name != "plain-part")
                line += ", " + kind.title;
        } else {
            if (item.count > 1)
                line += std::to_string(item.count) + " ";
            line += kind.title;
            for (const model::SpecPhrase& phrase : item.spec)
                line += " " + phrase->text;
            line += ", " + truth.item(item.touches.front()).name;
            const std::string base = truth.item(item.touches.back()).name;
            // That it is tied to the body goes without saying, half of the time.
            if (base != "body" || chance.one_in(2))
                line += " to " + base;
        }
        if (chance.one_in(5))
            std::transform(line.begin(), line.begin() + 1, line.begin(),
                           [](char c) { return static_cast<char>(c - 'a' + 'A'); });
        text += (chance.one_in(3) ? std::to_string(i + 1) + ". " : std::string()) + line + "\n";
    }
    return text;
}

} // namespace matchmark::capture_test
