// Danger met unprepared: an act that lays open, or works on, something whose hazard is not yet made
// safe.
#pragma once

#include "bench/bench.hpp"

namespace matchmark::bench {

struct Exposure {
    ItemId item;         // the item that has the hazard
    std::size_t use = 0; // index into its kind's hazards
    ItemId laid_open;    // what the act reaches: the item itself or what it feeds
    ItemId loose_cover;  // in a trial: covers that, and is held by nothing; unknown: none does
};

// Is the danger met by work on what it is in, or on what ties that? So is a part, and energy `in` a
// part: a charge, a pressure, a weight. A fluid is not: what is let out first, the author says.
bool is_met_by_hand(const model::Item& danger);

// The first hazard that `act` meets unprepared between the two states; nothing when it is safe.
std::optional<Exposure> exposure(const Bench& bench, const State& before, const State& after,
                                 const Act& act);

} // namespace matchmark::bench
