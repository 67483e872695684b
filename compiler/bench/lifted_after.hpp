// What lies loose between two parts comes off after the one that lies over it: an O-ring is not
// lifted from under a cover that is on.
#pragma once

#include "bench/bench.hpp"

#include <vector>

namespace matchmark::bench {

// Tells each act on a part what lies loose between it, or what it carries, and another, and is
// taken off later: the next act on it in the row takes all of it off. The acts stand in the order
// in which they are done.
void note_lifted_after(const Bench& bench, const std::vector<Act*>& acts);

// The part that lies over a loose seal and comes away before it: of those that it lies between, the
// first that can be taken out. Unknown for what does not lie loose, and for what no fastener
// presses: that may be picked out of its groove.
ItemId part_over(const Bench& bench, ItemId seal);

} // namespace matchmark::bench
