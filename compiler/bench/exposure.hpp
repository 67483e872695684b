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

// Is the danger met by work that frees what it is in? So is a part, and energy `in` a
// part: a charge, a pressure, a weight. A fluid is not: what is let out first, the author says.
bool is_met_by_hand(const model::Item& danger);

// Is the danger a supply, which is met by work on what it feeds: mains, gas?
bool is_met_by_what_it_feeds(const model::Item& danger);

// Does an act on the item free the part, or join it: on the part itself, a connector that joins it,
// a fastener or bond that holds it? Not so a screw by which something else is held to it: whoever
// takes a lamp off an engine has no business with the spring inside.
bool frees(const model::Model& model, ItemId item, ItemId part);

// Is the item a fluid, and the danger an energy in the same part: fat, and the heat of its tank?
bool shares_vessel(const model::Model& model, ItemId item, ItemId danger);

// Does a line of the danger's own need the item for a verb to safety: a spring's cone, by whose set
// screws it is let down? Work on that is no work near the danger.
bool is_needed_for_safety(const model::Model& model, ItemId item, ItemId danger,
                          const model::HazardUse& use);

// The first hazard that `act` meets unprepared between the two states; nothing when it is safe.
std::optional<Exposure> exposure(const Bench& bench, const State& before, const State& after,
                                 const Act& act);

} // namespace matchmark::bench
