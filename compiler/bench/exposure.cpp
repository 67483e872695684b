// Finds the act that meets a danger which nobody has made safe yet.
#include "bench/exposure.hpp"

#include "bench/dangerous.hpp"
#include "bench/isolation.hpp"
#include "bench/under_power.hpp"

#include <algorithm>

namespace matchmark::bench {

using model::contains;
using model::HazardUse;
using model::Item;
using model::Kind;
using model::Role;

bool made_safe(const Bench& bench, const State& state, ItemId id, StateSet safe) {
    const Item& item = bench.model->item(id);
    const Kind& kind = bench.model->kind(item.kind);
    for (std::uint16_t member = 0; member < item.count; ++member) {
        bool met = false;
        for (unsigned set = 0; set < kind.set_count(); ++set) {
            met = met || contains(safe, state_of(bench, state, id, member, set));
        }
        if (!met)
            return false;
    }
    return true;
}

namespace {

bool met_on_reach(const Kind& kind) {
    return std::any_of(kind.hazards.begin(), kind.hazards.end(),
                       [](const HazardUse& use) { return use.on_reach; });
}

// The verbs of the set in which safety lies are how it is made safe: they are always free.
bool makes_safe_first(const Kind& kind, const HazardUse& use, const Act& act) {
    const unsigned set = kind.set_of[kind.verbs[act.verb].to];
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        if (contains(use.safe, static_cast<StateId>(i)) && kind.set_of[i] == set)
            return true;
    }
    return false;
}

// Can safety be reached only by hands that are where the danger is?
bool made_safe_close_by(const Kind& kind, const HazardUse& use) {
    return std::none_of(kind.verbs.begin(), kind.verbs.end(), [&](const model::Verb& verb) {
        return verb.from_outside && contains(use.safe, verb.to);
    });
}

// Does the act lead a dangerous item to safety? Where several lie open, somebody has to begin.
bool begins_with_safety(const Bench& bench, const State& before, const Act& act) {
    const Kind& kind = bench.model->kind_of(act.item);
    return is_dangerous(bench, before, act.item) &&
           std::any_of(kind.hazards.begin(), kind.hazards.end(),
                       [&](const HazardUse& use) { return makes_safe_first(kind, use, act); });
}

// Does the act part the plug of a cell inside, by which the dangerous item is still fed, or lock or
// unlock it? What is fed is not made safe: this comes first.
bool cuts_what_feeds(const Bench& bench, const State& before, const Act& act, ItemId id,
                     const HazardUse& use) {
    const Kind& kind = bench.model->kind_of(act.item);
    if (kind.role != Role::connector || kind.set_of[kind.verbs[act.verb].to] != 0)
        return false;
    const ItemId source = inner_source(bench, act.item, id);
    return source.known() && is_live(bench, before, source) &&
           !safe_under_power(bench.model->kind_of(id), use.safe);
}

bool touches(const Bench& bench, const Act& act, ItemId part) {
    if (!part.known())
        return false;
    if (act.item == part)
        return true;
    const auto& parts = bench.model->item(act.item).touches;
    return std::find(parts.begin(), parts.end(), part) != parts.end();
}

bool could_be_made_safe(const Bench& bench, const State& state, ItemId id) {
    const Kind& kind = bench.model->kind_of(id);
    return reachable(bench, state, id) ||
           std::any_of(kind.verbs.begin(), kind.verbs.end(),
                       [](const model::Verb& verb) { return verb.from_outside; });
}

bool held_by_nothing(const Bench& bench, const State& state, ItemId part) {
    const auto holders = holders_of(bench, part);
    return !holders.empty() && std::none_of(holders.begin(), holders.end(),
                                            [&](ItemId tie) { return binds(bench, state, tie); });
}

enum class Guards : unsigned char { as_they_lie, if_held };

std::vector<ItemId> covered_by(const Bench& bench, const State& state, ItemId part, Guards guards) {
    auto covers = covers_of(bench, state, part);
    if (guards == Guards::if_held)
        std::erase_if(covers, [&](ItemId cover) { return held_by_nothing(bench, state, cover); });
    return covers;
}

// What the hazard lays open: what it feeds, or the item itself. What anyone can touch from the
// start does not count; from outside, nor does what lay open before.
ItemId laid_open(const Bench& bench, const State& start, const State& before, const State& after,
                 ItemId id, bool from_outside, Guards guards = Guards::as_they_lie) {
    const Item& item = bench.model->item(id);
    const auto lies_open = [&](ItemId part) {
        if (!bench.exists(part) || reachable(bench, start, part))
            return false;
        const bool is_tie = model::is_tie(bench.model->item(part).role);
        const auto open_in = [&](const State& state) {
            return (is_tie ? binds(bench, state, part) : present(bench, state, part)) &&
                   covered_by(bench, state, part, guards).empty();
        };
        return from_outside ? !open_in(before) && open_in(after)
                            : open_in(before) || open_in(after);
    };
    if (item.feeds.empty())
        return lies_open(id) ? id : ItemId{};
    for (const auto* list : {&item.feeds, &item.feeding->bare_ends}) {
        const auto found = std::find_if(list->begin(), list->end(), lies_open);
        if (found != list->end())
            return *found;
    }
    return {};
}

// Of the dangers those that the act may meet, in their order: what it works on, what that carries,
// and what it may lay open. All of them, where that is no more work.
std::vector<ItemId> asked_for(const Bench& bench, const Act& act, const Dangers& dangers) {
    const Model& model = *bench.model;
    std::vector<ItemId> worked_on = model.item(act.item).touches;
    worked_on.push_back(act.item);
    std::vector<ItemId> asked = dangers.from_afar;
    if (model.item(act.item).role == Role::fluid && model.item(act.item).carrier.known())
        worked_on.push_back(model.item(act.item).carrier);
    for (const ItemId id : worked_on) {
        const auto& carried = model.item(id).carried;
        if (asked.size() + carried.size() >= dangers.items.size())
            return dangers.items;
        asked.push_back(id);
        asked.insert(asked.end(), carried.begin(), carried.end());
    }
    std::sort(asked.begin(), asked.end());
    asked.erase(std::unique(asked.begin(), asked.end()), asked.end());
    std::erase_if(asked, [&](ItemId id) {
        return !std::binary_search(dangers.items.begin(), dangers.items.end(), id);
    });
    return asked;
}

} // namespace

bool is_dangerous(const Bench& bench, const State& state, ItemId id) {
    const auto& hazards = bench.model->kind_of(id).hazards;
    return bench.exists(id) &&
           std::any_of(hazards.begin(), hazards.end(), [&](const HazardUse& hazard) {
               return !made_safe(bench, state, id, hazard.safe);
           });
}

bool is_met_by_hand(const Item& danger) {
    return danger.role == Role::part || (danger.role == Role::energy && danger.carrier.known());
}

bool is_met_by_what_it_feeds(const Item& danger) {
    return danger.role == Role::energy && !danger.carrier.known() && !danger.feeds.empty();
}

bool frees(const Model& model, ItemId item, ItemId part) {
    const Item& worked = model.item(item);
    const auto& parts = worked.touches;
    const bool held_to_it =
        worked.role != Role::connector && parts.size() > 1 && parts.back() == part;
    return part.known() && (item == part || (!held_to_it && std::find(parts.begin(), parts.end(),
                                                                      part) != parts.end()));
}

bool shares_vessel(const Model& model, ItemId item, ItemId danger) {
    const ItemId vessel = model.item(item).carrier;
    return vessel.known() && model.item(item).role == Role::fluid &&
           model.item(danger).role == Role::energy && model.item(danger).carrier == vessel;
}

bool is_needed_for_safety(const Model& model, ItemId item, ItemId danger, const HazardUse& use) {
    const Kind& kind = model.kind_of(danger);
    const auto leads_there = [&](const std::string& name) {
        return std::any_of(kind.verbs.begin(), kind.verbs.end(), [&](const model::Verb& verb) {
            const StateSet set = model::states_of_set(kind, kind.set_of[verb.to]);
            return verb.name == name && (use.safe & set) != 0;
        });
    };
    const auto& needs = model.item(danger).needs;
    return std::any_of(needs.begin(), needs.end(), [&](const model::Need& need) {
        return need.condition.item.item == item && leads_there(need.verb);
    });
}

std::vector<ItemId> holders_of(const Bench& bench, ItemId part) {
    std::vector<ItemId> holders = bench.model->item(part).ties;
    std::erase_if(holders, [&](ItemId tie) {
        const Item& item = bench.model->item(tie);
        return !bench.exists(tie) || item.role == Role::connector || item.touches.back() == part ||
               bench.model->kind(item.kind).lies_loose;
    });
    return holders;
}

namespace {

std::optional<Exposure> laid_bare(const Bench& bench, const State& start, const State& state,
                                  ItemId id, Guards guards) {
    const auto& hazards = bench.model->kind_of(id).hazards;
    for (std::size_t use = 0; use < hazards.size(); ++use) {
        if (!hazards[use].on_reach || made_safe(bench, state, id, hazards[use].safe) ||
            !could_be_made_safe(bench, state, id))
            continue;
        const ItemId open = laid_open(bench, start, state, state, id, false, guards);
        if (open.known())
            return Exposure{id, use, open, {}};
    }
    return std::nullopt;
}

} // namespace

std::optional<Exposure> laid_bare(const Bench& bench, const State& start, const State& state,
                                  ItemId id) {
    return laid_bare(bench, start, state, id, Guards::as_they_lie);
}

std::optional<Exposure> open_in_trial(const Bench& bench, const State& start, const State& state,
                                      ItemId id) {
    if (const auto open = laid_bare(bench, start, state, id))
        return open;
    auto open = laid_bare(bench, start, state, id, Guards::if_held);
    if (open)
        open->loose_cover = covered_by(bench, state, open->laid_open, Guards::as_they_lie).front();
    return open;
}

Dangers dangers(const Bench& bench) {
    Dangers found;
    found.start = assembled(bench);
    for (std::uint32_t i = 0; i < bench.model->items.size(); ++i) {
        if (bench.model->kind_of(ItemId{i}).hazards.empty() || !bench.exists(ItemId{i}))
            continue;
        found.items.push_back(ItemId{i});
        if (met_on_reach(bench.model->kind_of(ItemId{i})) ||
            is_met_by_what_it_feeds(bench.model->item(ItemId{i})))
            found.from_afar.push_back(ItemId{i});
    }
    return found;
}

std::optional<Exposure> exposure(const Bench& bench, const State& before, const State& after,
                                 const Act& act, const Dangers& dangers) {
    const Model& model = *bench.model;
    const bool from_outside = model.kind_of(act.item).verbs[act.verb].from_outside;
    for (const ItemId id : asked_for(bench, act, dangers)) {
        const Kind& kind = model.kind_of(id);
        const bool frees_carrier = frees(model, act.item, model.item(id).carrier);
        const bool touched = touches(bench, act, id) || shares_vessel(model, act.item, id);
        const bool supplies = is_met_by_what_it_feeds(model.item(id));
        const bool far = !touched && !frees_carrier && !supplies;
        if (far && !met_on_reach(kind))
            continue;
        for (std::size_t use = 0; use < kind.hazards.size(); ++use) {
            const HazardUse& hazard = kind.hazards[use];
            if (act.item == id && makes_safe_first(kind, hazard, act))
                continue;
            if (made_safe(bench, before, id, hazard.safe) ||
                cuts_what_feeds(bench, before, act, id, hazard))
                continue;
            const bool one_of_several = act.item != id && kind.role == Role::part &&
                                        made_safe_close_by(kind, hazard) &&
                                        begins_with_safety(bench, before, act);
            if (hazard.on_reach && !one_of_several && could_be_made_safe(bench, before, id)) {
                const ItemId open =
                    laid_open(bench, dangers.start, before, after, id, from_outside);
                if (open.known())
                    return Exposure{id, use, open, {}};
            }
            const bool by_hand = (is_met_by_hand(model.item(id)) &&
                                  (touched || (frees_carrier && reachable(bench, before, id)))) ||
                                 (supplies && would_be_live(bench, before, act, id));
            if (act.item == id ||
                (by_hand && !from_outside && !is_needed_for_safety(model, act.item, id, hazard)))
                return Exposure{id, use, id, {}};
        }
    }
    return std::nullopt;
}

std::optional<Exposure> exposure(const Bench& bench, const State& before, const State& after,
                                 const Act& act) {
    return exposure(bench, before, after, act, dangers(bench));
}

} // namespace matchmark::bench
