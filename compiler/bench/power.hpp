// What stands under power together, and what a supply would make dangerous again.
#pragma once

#include "bench/bench.hpp"

namespace matchmark::bench {

// Does time alone lead on in this set of states: does a verb of it wait, or decay?
bool passes_with_time(const model::Kind& kind, unsigned set);

// The states of this set that a supply takes back: those in which the item may be left, when a
// hazard's safety lies in the set. In the first set that is said only of an energy that time makes
// safe: heat, what runs on.
StateSet taken_back(const model::Kind& kind, unsigned set);

// The parts, what they carry, and what connectors join to these, and so on. With a state: only what
// is at its place, and through connectors that bind. Energy has no place of its own to be off from.
struct UnderPower {
    std::vector<ItemId> items;
    std::vector<bool> has_item; // by the item's number

    [[nodiscard]] bool has(ItemId id) const { return has_item[id.value]; }
};
UnderPower under_power_with(const Bench& bench, const State* state,
                            const std::vector<ItemId>& parts);

// What these sources feed, each by its own line.
std::vector<ItemId> fed_by_all(const Bench& bench, const std::vector<ItemId>& sources);

// The other way round: the items from which power would come to one of these.
UnderPower leading_to(const Bench& bench, const State* state, const std::vector<ItemId>& items);

// Is it energy that no part carries, which is everywhere in the device?
bool is_everywhere(const Bench& bench, ItemId id);

// A source that can be cut from outside; but not one that only time cuts and that may be left so,
// as heat that feeds a tip.
bool is_supply(const Bench& bench, ItemId id);

// The supplies that may come to the item, whatever the device stands like.
std::vector<ItemId> supplies_of(const Bench& bench, ItemId item);

// Does the verb lead to a state that a supply takes back? Of what flows only time's own verbs do:
// to stop a machine while it is on is how it is stopped.
bool is_taken_back(const model::Kind& kind, const model::Verb& verb);

// The supply that is on and would take back what the act does.
std::optional<StillLive> supply_still_on(const Bench& bench, const State& state, const Act& act);

} // namespace matchmark::bench
