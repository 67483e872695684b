// Where the trade does the acts in another order than the one with the fewest changes of tool: an
// O-ring is lifted when the cover over it is off, a protective earth parted when nothing else is
// joined there, a plug pulled while its part is still held.
#pragma once

#include "plan/way_in/way_in.hpp"

namespace matchmark::plan {

// The goal, and where it is to take off a loose seal that fasteners press: the part over it, too.
WayInGoal with_what_lies_over(const bench::Bench& bench, WayInGoal goal);

// Moves acts, with their reasons. Behind the act that takes a part away: those that take off, by
// hand, what lies loose under it. Behind those that part the other connectors of a part: what is
// parted last. Before the fasteners that hold a part: the connectors on it that are parted by hand,
// and those that ask for a tool where that costs nothing. Behind the connectors on a part: the
// fasteners of it that are undone by hand, so that no part hangs on its hoses. Where the bench does
// not allow that, an act goes a little further on, or stays. The tools taken up are counted anew.
void put_in_trade_order(const bench::Bench& bench, WayIn& way);

} // namespace matchmark::plan
