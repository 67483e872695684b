// The dangers of a device, found once for many acts.
#pragma once

#include "bench/exposure.hpp"

#include <vector>

namespace matchmark::bench {

// Is every member of the item in one of these states, the safe ones of a hazard?
bool made_safe(const Bench& bench, const State& state, ItemId item, StateSet safe);

// Has the item a hazard that is not made safe in this state?
bool is_dangerous(const Bench& bench, const State& state, ItemId item);

struct Dangers {
    std::vector<ItemId> items;     // all that are dangerous, or more; in order of declaration
    std::vector<ItemId> from_afar; // those that an act may meet from afar, or more; in that order
    State start;                   // the device as assembled
};

// Those of the device as it is assembled.
Dangers dangers(const Bench& bench);

// The item's first hazard on reach that is not made safe, if the item, or what it feeds, can be
// reached in this state and could not at the start.
std::optional<Exposure> laid_bare(const Bench& bench, const State& start, const State& state,
                                  ItemId item);

// The same of a trial: a cover that no fastener and no bond holds, though it has some, keeps nobody
// off (2006/42/EC, annex I, 1.4.2.1: fixed guards must not stay in place without their fixings).
std::optional<Exposure> open_in_trial(const Bench& bench, const State& start, const State& state,
                                      ItemId item);

// The fasteners and bonds that hold the part to another, in the bench's variant: no seal that only
// lies between them.
std::vector<ItemId> holders_of(const Bench& bench, ItemId part);

// As `exposure`, with these at hand.
std::optional<Exposure> exposure(const Bench& bench, const State& before, const State& after,
                                 const Act& act, const Dangers& dangers);

} // namespace matchmark::bench
