// What would have to be done first: the shortest acts that bring an item to a state, or make a
// refused act possible.
#pragma once

#include "bench/bench.hpp"

#include <functional>

namespace matchmark::bench {

// The states in which the author's next act on a slot expects to find it: when several would do,
// these are tried first. Empty set: no wish.
using Wish = std::function<StateSet(std::uint32_t slot)>;

// The acts, in order, that make `act` possible on `state`, given why it is refused. Empty when
// nothing on the bench helps (a supply that is not listed, no way back).
std::vector<Act> missing_for(const Bench& bench, const State& state, const Act& act,
                             const Refusal& refusal, const Wish& wish);

// The acts, in order, that bring the item's members to one of these states, with all that this
// needs first. Nothing when it cannot be done.
std::optional<std::vector<Act>> bring_to(const Bench& bench, const State& state, ItemId item,
                                         StateSet states, const Wish& wish);

// The parts by how deep they are carried, the deepest first.
std::vector<ItemId> innermost_first(const Model& model, std::vector<ItemId> parts);

} // namespace matchmark::bench
