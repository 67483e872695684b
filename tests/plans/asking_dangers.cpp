// How an act would meet a danger that is not made safe, for the second opinion on plans.
#include "plans/asking.hpp"

#include "model/passing_on.hpp"

#include <algorithm>

namespace matchmark::plans {

using model::contains;
using model::Item;
using model::ItemId;
using model::Kind;
using model::Role;
using model::StateSet;

namespace {

bool leads_to_safety(const Kind& kind, const std::string& name, const model::HazardUse& use) {
    return std::any_of(kind.verbs.begin(), kind.verbs.end(), [&](const model::Verb& verb) {
        return verb.name == name &&
               (use.safe & model::states_of_set(kind, kind.set_of[verb.to])) != 0;
    });
}

} // namespace

bool Asking::makes_safe(const Subject& it, StateSet safe) const {
    for (std::size_t i = 0; i < it.kind.states.size(); ++i) {
        const auto s = static_cast<model::StateId>(i);
        if (contains(safe, s) && it.kind.set_of[s] == it.deed.set)
            return true;
    }
    return false;
}

// How the deed would meet the danger while it is not safe.
std::string Asking::meets(const Subject& it, ItemId danger, const model::HazardUse& use) {
    const Item& item = model_.item(danger);
    const Kind& kind = model_.kind(item.kind);
    const bool outside = std::any_of(kind.verbs.begin(), kind.verbs.end(),
                                     [](const auto& verb) { return verb.from_outside; });
    const auto touches = [&](ItemId part) {
        return part.known() && (part == it.id || among(it.item.touches, part));
    };
    std::vector<std::string> ways;
    const bool in_a_part = item.role == Role::energy && item.carrier.known();
    // What its own line needs for a verb of the set in which safety lies is no work near it.
    const bool paves = std::any_of(item.needs.begin(), item.needs.end(), [&](const auto& need) {
        return need.condition.item.item == it.id && leads_to_safety(kind, need.verb, use);
    });
    if (item.role != Role::part && !in_a_part) {
        const bool supplies = item.role == Role::energy && !item.feeds.empty();
        ways.emplace_back(it.id == danger ? "true"
                          : supplies && !paves && !it.verb.from_outside
                              ? in_touch_with(it, danger, false)
                              : "false");
    } else if (it.verb.from_outside) { // hands are near what they work on alone
        ways.emplace_back(it.id == danger ? "true" : "false");
    } else {
        ways.emplace_back(touches(danger) && (!paves || it.id == danger) ? "true" : "false");
        if (in_a_part && it.item.role == Role::fluid && it.item.carrier == item.carrier && !paves)
            ways.emplace_back("true");
        const auto& ends = it.item.touches;
        const bool held_to_it =
            it.item.role != Role::connector && ends.size() > 1 && ends.back() == item.carrier;
        if (touches(item.carrier) && !held_to_it && !paves)
            ways.push_back(formula_.reachable(danger, it.now));
    }
    if (use.on_reach) {
        const bench::State start = bench::assembled(formula_.bench);
        const Moment after{it.now.deed, true, false};
        std::vector<std::string> open;
        std::vector<ItemId> met =
            item.feeds.empty() ? std::vector<ItemId>{danger} : item.feeds.all();
        for (std::uint32_t i = 0; i < model_.items.size(); ++i) {
            const Item& end = model_.items[i];
            const bool on_fed = std::any_of(end.touches.begin(), end.touches.end(),
                                            [&](ItemId part) { return among(item.feeds, part); });
            if (on_fed && model_.kind(end.kind).bare && item.role == Role::energy && !in_a_part)
                met.push_back(ItemId{i});
        }
        for (const ItemId part : met) {
            if (!formula_.bench.exists(part) || bench::reachable(formula_.bench, start, part))
                continue;
            const bool tie = model::is_tie(model_.item(part).role);
            const auto lies_open = [&](Moment when) {
                return all_of({tie ? formula_.binds(part, when) : formula_.present(part, when),
                               formula_.reachable(part, when)});
            };
            // From outside only what was not open before it.
            open.push_back(it.verb.from_outside ? all_of({no(lies_open(it.now)), lies_open(after)})
                                                : any_of({lies_open(it.now), lies_open(after)}));
        }
        ways.push_back(all_of({outside ? std::string("true") : formula_.reachable(danger, it.now),
                               any_of(open), no(begins_with_safety(it, danger, use))}));
    }
    return any_of(ways);
}

// Of several parts that lie open and are made safe by hand beside them, one has to be the first.
std::string Asking::begins_with_safety(const Subject& it, ItemId danger,
                                       const model::HazardUse& use) {
    const Kind& kind = model_.kind_of(danger);
    const bool from_afar = std::any_of(kind.verbs.begin(), kind.verbs.end(), [&](const auto& verb) {
        return verb.from_outside && contains(use.safe, verb.to);
    });
    const bool leads_to_safety =
        std::any_of(it.kind.hazards.begin(), it.kind.hazards.end(),
                    [&](const auto& own) { return makes_safe(it, own.safe); });
    if (it.id == danger || kind.role != Role::part || from_afar || !leads_to_safety)
        return "false";
    std::vector<std::string> dangerous;
    for (const model::HazardUse& own : it.kind.hazards)
        dangerous.push_back(no(formula_.safe(it.id, own.safe, it.now)));
    return any_of(dangerous);
}

// The plug of a cell inside is parted before what the cell charges is made safe, unless that can be
// done under power.
std::string Asking::cuts_the_feed(const Subject& it, ItemId danger, const model::HazardUse& use) {
    const Kind& kind = model_.kind_of(danger);
    const bool under_power =
        std::any_of(kind.verbs.begin(), kind.verbs.end(), [&](const auto& verb) {
            return verb.safe_when_live && contains(use.safe, verb.to);
        });
    if (it.item.role != Role::connector || contains(it.kind.binds, it.deed.to) || under_power)
        return "false";
    for (std::uint32_t s = 0; s < model_.items.size(); ++s) {
        const Item& source = model_.items[s];
        if (cut_outside(model_.kind(source.kind)) || !formula_.bench.exists(ItemId{s}))
            continue;
        const bool on_all = among(source.through, it.id);
        for (ItemId at = danger; at.known(); at = model_.item(at).carrier) {
            if (among(source.feeds, at) && (on_all || model::is_on_its_line(source, it.id, at)))
                return formula_.live(ItemId{s}, it.now);
        }
    }
    return "false";
}

std::string Asking::no_danger(const Subject& it) {
    std::vector<std::string> all;
    for (std::uint32_t i = 0; i < model_.items.size(); ++i) {
        const ItemId danger{i};
        if (!formula_.bench.exists(danger))
            continue;
        for (const model::HazardUse& use : model_.kind_of(danger).hazards) {
            if (it.id == danger && makes_safe(it, use.safe))
                continue;
            all.push_back(any_of({formula_.safe(danger, use.safe, it.now),
                                  no(meets(it, danger, use)), cuts_the_feed(it, danger, use)}));
        }
    }
    return all_of(all);
}

} // namespace matchmark::plans
