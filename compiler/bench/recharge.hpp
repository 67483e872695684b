// What a source does to what it feeds when it begins to be live again: a charge that was let out
// and proved gone is back, and so is heat.
#pragma once

#include "bench/bench.hpp"

namespace matchmark::bench {

// The items that an act on the item may charge again: what is fed by it, or through it, with what
// these carry and what connectors join to them, and heat that no part carries; of these, what has a
// state that a supply takes back. Empty unless the source is a supply.
std::vector<ItemId> charged_by(const Bench& bench, ItemId item);

// The sources that the item is, or is on the way of, and that are not live.
std::vector<ItemId> dead_sources_of(const Bench& bench, const State& state, ItemId item);

// Those of the sources that are live now charge again what they feed and is at its place, with what
// it carries and what is joined to it.
void charge_again(const Bench& bench, State& state, const std::vector<ItemId>& were_dead);

// Is there a state in which a supply takes back what is of the kind?
bool may_hold_a_charge(const model::Kind& kind);
// And does the item exist?
bool holds_a_charge(const Bench& bench, ItemId item);

// Its members that stand in such a state are dangerous again; by running only in the sets of states
// in which one waits.
enum class Charged : unsigned char { by_its_supply, by_running };
void charge(const Bench& bench, State& state, ItemId item, Charged how);

} // namespace matchmark::bench
