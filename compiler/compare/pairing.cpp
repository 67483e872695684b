// What in the new state is what in the old one. What has the same name is the same; what has not,
// by what it is made of.
#include "compare/pairing.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace matchmark::compare {

using model::ActionSort;
using model::ItemId;
using model::Model;
using model::Section;
using model::Step;

namespace {

std::vector<std::string> keys(std::size_t count, const auto& key) {
    std::vector<std::string> result;
    result.reserve(count);
    for (std::size_t i = 0; i < count; ++i) {
        result.push_back(key(i));
    }
    return result;
}

Pairs unpaired(std::size_t before, std::size_t after) {
    Pairs pairs;
    pairs.after_of.resize(before);
    pairs.before_of.resize(after);
    return pairs;
}

std::vector<std::string> item_keys(const Model& model, int how) {
    return keys(model.items.size(), [&](std::size_t i) {
        const model::Item& item = model.items[i];
        if (how == 0) {
            return item.name;
        }
        std::string key =
            fmt::format("{}|{}|{}", static_cast<int>(item.role), item.title,
                        item.kind.known() ? model.kind(item.kind).name : std::string());
        if (how == 2) {
            return item.title.empty() ? std::string() : key;
        }
        key += fmt::format("|{}", item.count);
        for (const model::SpecPhrase& phrase : item.spec) {
            key += "|" + phrase->text;
        }
        return key;
    });
}

std::vector<std::string> resource_keys(const model::Procedure& procedure, bool by_name) {
    return keys(procedure.resources.size(), [&](std::size_t i) {
        const model::Resource& resource = procedure.resources[i];
        if (by_name) {
            return resource.name;
        }
        return resource.text.empty()
                   ? std::string()
                   : fmt::format("{}|{}", static_cast<int>(resource.sort), resource.text);
    });
}

std::string members_key(const model::Target* target) {
    return target == nullptr ? "" : fmt::format("{}", fmt::join(target->ref.members, ","));
}

// What is done to which item; the same words on both sides.
std::string deed_key(const Pairing& pairing, const Half& half, const Deed& deed, bool old) {
    if (deed.action == nullptr) {
        return "test " + half.step_of(deed).name;
    }
    const bool measures = deed.action->sort == ActionSort::measure;
    return fmt::format("{}|{}|{}|{}", static_cast<int>(deed.action->sort),
                       deed.action->sort == ActionSort::verb ? deed.action->verb : "",
                       deed.target == nullptr ? "" : pairing.item_key(deed.target->ref.item, old),
                       measures ? *deed.action->aspect : "");
}

enum class StepKey : unsigned char { section_and_name, content_and_title, content, title, name };

std::vector<std::string> step_keys(const Pairing& pairing, const Half& half, bool old,
                                   StepKey how) {
    std::vector<std::string> contents(half.side.procedure.steps.size());
    for (const Deed& deed : half.deeds) {
        if (deed.action != nullptr) {
            contents[deed.step] += deed_key(pairing, half, deed, old) + ";";
        }
    }
    return keys(contents.size(), [&](std::size_t i) {
        const Step& step = half.step(i);
        std::string tail = contents[i];
        switch (how) {
        case StepKey::section_and_name:
            tail = step.name;
            break;
        case StepKey::content_and_title:
            tail += tail.empty() ? "" : "|" + step.title;
            break;
        case StepKey::content:
            break;
        case StepKey::title:
            tail = step.title;
            break;
        case StepKey::name: // moved from section to section; the way back has its own of that name
            return step.section == Section::put_back
                       ? std::string()
                       : fmt::format("{}|{}", step.is_test, step.name);
        }
        return tail.empty()
                   ? std::string()
                   : fmt::format("{}|{}|{}", static_cast<int>(step.section), step.is_test, tail);
    });
}

void pair_steps(Pairing& pairing) {
    pairing.steps = unpaired(pairing.before.side.procedure.steps.size(),
                             pairing.after.side.procedure.steps.size());
    for (const StepKey how : {StepKey::section_and_name, StepKey::name, StepKey::content_and_title,
                              StepKey::content, StepKey::title}) {
        tie_equal(pairing.steps, step_keys(pairing, pairing.before, true, how),
                  step_keys(pairing, pairing.after, false, how));
    }
}

enum class DeedKey : unsigned char { all_in_step, all, in_step, anywhere, item_in_step };

std::vector<std::string> deed_keys(const Pairing& pairing, bool old, DeedKey how) {
    const Half& half = old ? pairing.before : pairing.after;
    return keys(half.deeds.size(), [&](std::size_t i) {
        const Deed& deed = half.deeds[i];
        const auto partner = old ? std::optional(deed.step) : pairing.steps.before_of[deed.step];
        const std::string step = partner ? std::to_string(*partner) : "";
        if (deed.action == nullptr) {
            return step.empty() ? std::string() : "test " + step;
        }
        const std::string key = deed_key(pairing, half, deed, old);
        const bool back = half.step_of(deed).section == Section::put_back;
        switch (how) {
        case DeedKey::all_in_step:
            return step.empty() ? step : step + ":" + key + "|" + members_key(deed.target);
        case DeedKey::all:
            return fmt::format("{}:{}|{}", back, key, members_key(deed.target));
        case DeedKey::in_step:
            return step.empty() ? step : step + ":" + key;
        case DeedKey::anywhere:
            return fmt::format("{}:{}", back, key);
        case DeedKey::item_in_step:
            break;
        }
        const bool plain = deed.action->sort == ActionSort::verb && deed.target != nullptr;
        return !plain || step.empty() ? std::string()
                                      : step + ":" + pairing.item_key(deed.target->ref.item, old);
    });
}

void pair_deeds(Pairing& pairing) {
    pairing.deeds = unpaired(pairing.before.deeds.size(), pairing.after.deeds.size());
    for (const DeedKey how : {DeedKey::all_in_step, DeedKey::all, DeedKey::in_step,
                              DeedKey::anywhere, DeedKey::item_in_step}) {
        tie_equal(pairing.deeds, deed_keys(pairing, true, how), deed_keys(pairing, false, how));
    }
}

// The old deeds outside the longest row that has kept its order.
std::vector<bool> moved_deeds(const Pairs& deeds) {
    std::vector<std::size_t> olds;
    for (std::size_t i = 0; i < deeds.after_of.size(); ++i) {
        if (deeds.after_of[i]) {
            olds.push_back(i);
        }
    }
    const auto place = [&](std::size_t k) { return *deeds.after_of[olds[k]]; };
    std::vector<std::size_t> ends; // of the best row of each length, its last
    std::vector<std::optional<std::size_t>> previous(olds.size());
    for (std::size_t k = 0; k < olds.size(); ++k) {
        const auto at = std::lower_bound(
            ends.begin(), ends.end(), place(k),
            [&](std::size_t end, std::size_t value) { return place(end) < value; });
        if (at != ends.begin()) {
            previous[k] = *(at - 1);
        }
        if (at == ends.end()) {
            ends.push_back(k);
        } else {
            *at = k;
        }
    }
    std::vector<bool> moved(deeds.after_of.size(), false);
    for (const std::size_t old : olds) {
        moved[old] = true;
    }
    std::optional<std::size_t> kept;
    if (!ends.empty()) {
        kept = ends.back();
    }
    for (; kept; kept = previous[*kept]) {
        moved[olds[*kept]] = false;
    }
    return moved;
}

// The deed of the way in whose line a derived one takes back.
void find_origins(std::vector<Deed>& deeds) {
    std::map<std::pair<std::uint32_t, std::uint32_t>, std::vector<std::size_t>> by_line;
    for (std::size_t i = 0; i < deeds.size(); ++i) {
        const Deed& deed = deeds[i];
        if (deed.action == nullptr || deed.target == nullptr || !deed.action->line.known()) {
            continue;
        }
        const Span line = deed.action->line;
        auto& same = by_line[{line.file, line.begin}];
        for (const std::size_t other : same) {
            if (deed.derived && deeds[other].target->ref.item == deed.target->ref.item) {
                deeds[i].origin = other;
                break;
            }
        }
        if (!deed.derived) {
            same.push_back(i);
        }
    }
}

} // namespace

void Pairs::tie(std::size_t before, std::size_t after) {
    after_of[before] = after;
    before_of[after] = before;
}

void tie_equal(Pairs& pairs, const std::vector<std::string>& before,
               const std::vector<std::string>& after) {
    std::map<std::string_view, std::vector<std::size_t>> waiting;
    for (std::size_t j = after.size(); j-- > 0;) {
        if (!pairs.before_of[j] && !after[j].empty()) {
            waiting[after[j]].push_back(j);
        }
    }
    for (std::size_t i = 0; i < before.size(); ++i) {
        const auto found = waiting.find(before[i]);
        if (!pairs.after_of[i] && found != waiting.end() && !found->second.empty()) {
            pairs.tie(i, found->second.back());
            found->second.pop_back();
        }
    }
}

Half::Half(const Side& given) : side(given) {
    std::vector<const guide::Step*> shown;
    for (const guide::Section& section : side.document.sections) {
        for (const guide::Step& step : section.steps) {
            shown.push_back(&step);
        }
    }
    const auto covered = side.model.guide(side.procedure.guide).variants &
                         ((model::VariantMask{1} << model::variant_count(side.model)) - 1);
    std::size_t next = 0;
    for (std::size_t s = 0; s < side.procedure.steps.size(); ++s) {
        const Step& step = side.procedure.steps[s];
        const bool here = (step.variants & covered) != 0 && next < shown.size();
        told.push_back(here ? shown[next++] : nullptr);
        if (step.is_test) {
            deeds.push_back({s, nullptr, nullptr, false, {}});
        }
        for (const model::Action& action : step.actions) {
            if (action.targets.empty()) {
                deeds.push_back({s, &action, nullptr, action.derived, {}});
            }
            for (const model::Target& target : action.targets) {
                deeds.push_back({s, &action, &target, action.derived, {}});
            }
        }
    }
    find_origins(deeds);
}

std::string Half::sentence(const Deed& deed) const {
    const Step& of = step_of(deed);
    if (deed.action == nullptr) {
        return of.title.empty() ? of.name : of.title;
    }
    const auto index = static_cast<std::size_t>(deed.action - of.actions.all().data());
    const guide::Step* shown = told[deed.step];
    if (shown == nullptr || index >= shown->instructions.size()) {
        return deed.action->verb;
    }
    return guide::plain(shown->instructions[index].words);
}

StepPlace Half::place(std::size_t index, bool in_old) const {
    const Step& of = step(index);
    const guide::Step* shown = told[index];
    return {shown == nullptr ? 0 : shown->number, of.name,
            shown == nullptr ? of.title : shown->title, in_old};
}

StepPlace Pairing::place_of_old(std::size_t step) const {
    const auto partner = steps.after_of[step];
    return partner ? after.place(*partner, false) : before.place(step, true);
}

std::string Pairing::item_key(ItemId item, bool old) const {
    return compare::item_key(items, item, old);
}

std::string item_key(const Pairs& items, ItemId item, bool old) {
    if (!item.known()) {
        return "-";
    }
    if (old) {
        return fmt::format("o{}", item.value);
    }
    const auto partner = items.before_of[item.value];
    return partner ? fmt::format("o{}", *partner) : fmt::format("n{}", item.value);
}

Pairs pair_items(const Model& before, const Model& after) {
    Pairs pairs = unpaired(before.items.size(), after.items.size());
    for (const int how : {0, 1, 2}) {
        tie_equal(pairs, item_keys(before, how), item_keys(after, how));
    }
    return pairs;
}

Pairing pair_up(const Side& before, const Side& after) {
    Pairing pairing{Half(before), Half(after), pair_items(before.model, after.model), {}, {},
                    {},           {}};
    pairing.resources =
        unpaired(before.procedure.resources.size(), after.procedure.resources.size());
    for (const bool by_name : {true, false}) {
        tie_equal(pairing.resources, resource_keys(before.procedure, by_name),
                  resource_keys(after.procedure, by_name));
    }
    pair_steps(pairing);
    pair_deeds(pairing);
    pairing.moved = moved_deeds(pairing.deeds);
    return pairing;
}

std::string subject_of(const Half& half, const Deed& deed) {
    if (deed.target != nullptr && deed.target->ref.item.known()) {
        return half.side.model.item(deed.target->ref.item).name;
    }
    return half.step_of(deed).name;
}

} // namespace matchmark::compare
