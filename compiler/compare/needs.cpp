// What a reader must have and be: tools, spares, supplies; training; and what the guide is for.
#include "compare/findings.hpp"
#include "model/describe.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace matchmark::compare {

using model::Resource;
using model::ResourceSort;

namespace {

struct Words {
    Sort added;
    Sort dropped;
    Sort changed;
    const char* name;
};

const Words& words_for(ResourceSort sort) {
    static constexpr std::array<Words, 3> words{{
        {Sort::tool_added, Sort::tool_dropped, Sort::tool_changed, "tool"},
        {Sort::spare_added, Sort::spare_dropped, Sort::spare_changed, "spare"},
        {Sort::supply_added, Sort::supply_dropped, Sort::supply_changed, "supply"},
    }};
    return words[static_cast<std::size_t>(sort)];
}

std::string title(const Resource& resource) {
    return resource.text.empty() ? resource.name : resource.text;
}

std::string amounts(const Resource& resource, bool money) {
    std::vector<std::string> words;
    for (const model::Quantity& quantity : resource.quantities) {
        if ((quantity.measure == model::Measure::money) == money) {
            words.push_back(model::for_reader(quantity));
        }
    }
    return fmt::format("{}", fmt::join(words, ", "));
}

// Alike for the same amount in other units.
std::string amounts_key(const Resource& resource, bool money) {
    std::string key;
    for (const model::Quantity& quantity : resource.quantities) {
        if ((quantity.measure == model::Measure::money) == money) {
            key += fmt::format("{} {:.9g} {};", static_cast<int>(quantity.measure), quantity.base,
                               money ? std::string(quantity.unit) : "");
        }
    }
    return key;
}

class Needs {
public:
    explicit Needs(Gathering& gathering) : gathering_(gathering), pairing_(gathering.pairing) {}

    void find() {
        const auto& before = pairing_.before.side.procedure.resources;
        const auto& after = pairing_.after.side.procedure.resources;
        for (std::size_t i = 0; i < before.size(); ++i) {
            if (!pairing_.resources.after_of[i]) {
                tell(words_for(before[i].sort).dropped, i, true, "no longer on the list");
            }
        }
        for (std::size_t i = 0; i < after.size(); ++i) {
            if (const auto old = pairing_.resources.before_of[i]) {
                compare(before[*old], after[i], i);
            } else {
                tell(words_for(after[i].sort).added, i, false, "new on the list");
            }
        }
    }

private:
    [[nodiscard]] const Half& half(bool old) const {
        return old ? pairing_.before : pairing_.after;
    }

    // The steps that use it.
    [[nodiscard]] std::vector<StepPlace> users(std::size_t index, bool old) const {
        std::vector<StepPlace> places;
        const auto uses = [&](const std::vector<model::ResourceId>& with) {
            return std::any_of(with.begin(), with.end(),
                               [&](model::ResourceId id) { return id.value == index; });
        };
        const auto& steps = half(old).side.procedure.steps;
        for (std::size_t s = 0; s < steps.size(); ++s) {
            const bool used =
                uses(steps[s].with) ||
                std::any_of(steps[s].actions.begin(), steps[s].actions.end(),
                            [&](const model::Action& action) { return uses(action.with); });
            if (used) {
                places.push_back(old ? pairing_.place_of_old(s) : pairing_.after.place(s, false));
            }
        }
        return places;
    }

    Change& tell(Sort sort, std::size_t index, bool old, const char* what) {
        const Resource& resource = half(old).side.procedure.resources[index];
        Change change;
        change.sort = sort;
        change.subject = resource.name;
        change.what =
            fmt::format("{} “{}”: {}", words_for(resource.sort).name, title(resource), what);
        change.steps = users(index, old);
        gathering_.changes.push_back(std::move(change));
        return gathering_.changes.back();
    }

    void differ(Sort sort, std::size_t index, const char* what, std::string before,
                std::string after) {
        Change& change = tell(sort, index, false, what);
        change.before = std::move(before);
        change.after = std::move(after);
    }

    // The numbers in its words, in a row: a fuse of 2 A is not one of 10 A.
    static std::string numbers(const Resource& resource) {
        std::string found;
        for (const char sign : resource.text) {
            const bool digit = sign >= '0' && sign <= '9';
            if (digit || (sign == '.' && !found.empty() && found.back() != ' '))
                found += sign;
            else if (!found.empty() && found.back() != ' ')
                found += ' ';
        }
        return found;
    }

    // A tool with which a hazard is ended, or its end proved.
    [[nodiscard]] bool makes_something_safe(std::size_t index) const {
        const auto& deeds = pairing_.after.deeds;
        return std::any_of(deeds.begin(), deeds.end(), [&](const Deed& deed) {
            return makes_safe(pairing_.after.side.model, deed) &&
                   std::any_of(deed.action->with.begin(), deed.action->with.end(),
                               [&](model::ResourceId id) { return id.value == index; });
        });
    }

    [[nodiscard]] std::string purposes(const Resource& resource, bool old, bool keyed) const {
        std::vector<std::string> names;
        for (const model::ItemId item : resource.for_items) {
            names.push_back(keyed ? pairing_.item_key(item, old)
                                  : model::for_reader(half(old).side.model, item));
        }
        std::sort(names.begin(), names.end());
        return names.empty() ? "nothing named" : model::list(names);
    }

    void compare(const Resource& old, const Resource& now, std::size_t index) {
        const Words& words = words_for(now.sort);
        if (old.sort != now.sort || flowing(old.text) != flowing(now.text)) {
            differ(words.changed, index, "another one", title(old), title(now));
            const bool rated = old.sort != ResourceSort::tool && numbers(old) != numbers(now);
            gathering_.changes.back().safety = rated || makes_something_safe(index);
        }
        if (amounts_key(old, false) != amounts_key(now, false)) {
            differ(now.sort == ResourceSort::tool ? words.changed : Sort::amount_changed, index,
                   "another amount", amounts(old, false), amounts(now, false));
        }
        if (amounts_key(old, true) != amounts_key(now, true)) {
            differ(Sort::price_changed, index, "another price", amounts(old, true),
                   amounts(now, true));
        }
        if (purposes(old, true, true) != purposes(now, false, true)) {
            differ(words.changed, index, "for something else", purposes(old, true, false),
                   purposes(now, false, false));
        }
        if (old.tool_class != now.tool_class) {
            const auto name = [](const Resource& tool) {
                return tool.tool_class ? std::string(model::describe(*tool.tool_class))
                                       : std::string("as usual");
            };
            differ(words.changed, index, "another class", name(old), name(now));
        }
        if (old.name != now.name) {
            Change note;
            note.sort = Sort::renamed;
            note.subject = now.name;
            note.what =
                fmt::format("the {} `{}` is now called `{}`", words.name, old.name, now.name);
            note.before = old.name;
            note.after = now.name;
            gathering_.notes.push_back(std::move(note));
        }
    }

    Gathering& gathering_;
    const Pairing& pairing_;
};

std::string goals(const Pairing& pairing, const Half& half, bool old, bool keyed) {
    std::string text;
    const model::Guide& guide = half.side.model.guide(half.side.procedure.guide);
    for (const model::Action& goal : guide.goals) {
        text += text.empty() ? "" : "; ";
        text += goal.verb;
        for (const model::Target& target : goal.targets) {
            text += " " + (keyed ? pairing.item_key(target.ref.item, old)
                                 : model::for_reader(half.side.model, target.ref));
        }
    }
    return text;
}

std::string variants(const Half& half) {
    const auto names = model::variant_names(
        half.side.model, half.side.model.guide(half.side.procedure.guide).variants);
    return names.empty() ? "every variant" : model::list(names);
}

} // namespace

void find_needs(Gathering& gathering) { Needs(gathering).find(); }

void find_head(Gathering& gathering) {
    const Pairing& pairing = gathering.pairing;
    const guide::Document& before = pairing.before.side.document;
    const guide::Document& after = pairing.after.side.document;
    const auto tell = [&](Sort sort, bool safety, const char* what, const std::string& was,
                          const std::string& is) {
        Change change;
        change.sort = sort;
        change.safety = safety;
        change.subject = after.name;
        change.what = what;
        change.before = was;
        change.after = is;
        gathering.changes.push_back(std::move(change));
    };
    if (before.reader != after.reader) {
        tell(Sort::reader_changed, true, "for whom the guide is", before.reader, after.reader);
    }
    if (goals(pairing, pairing.before, true, true) != goals(pairing, pairing.after, false, true)) {
        tell(Sort::goal_changed, false, "what the guide is for",
             goals(pairing, pairing.before, true, false),
             goals(pairing, pairing.after, false, false));
    }
    if (variants(pairing.before) != variants(pairing.after)) {
        tell(Sort::variants_changed, false, "the variants that the guide is for",
             variants(pairing.before), variants(pairing.after));
    }
    if (flowing(before.title) != flowing(after.title)) {
        tell(Sort::title_changed, false, "the guide's title", before.title, after.title);
    }
    if (flowing(before.device) != flowing(after.device)) {
        tell(Sort::title_changed, false, "the device's title", before.device, after.device);
    }
    const auto note = [&](const char* what, const std::string& was, const std::string& is) {
        if (was != is) {
            Change change;
            change.sort = Sort::kept_apart;
            change.subject = after.name;
            change.what = what;
            change.before = was;
            change.after = is;
            gathering.notes.push_back(std::move(change));
        }
    };
    note("name of the guide", before.name, after.name);
    note("author", before.author, after.author);
    note("date", before.date, after.date);
    note("revision of the guide", before.revision, after.revision);
    note("revision of the device", before.device_revision, after.device_revision);
}

} // namespace matchmark::compare
