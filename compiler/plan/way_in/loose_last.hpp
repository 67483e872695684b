// An O-ring is lifted when the cover over it is off: the order of work finds it before, where the
// bench always allows it.
#pragma once

#include "plan/way_in/way_in.hpp"

namespace matchmark::plan {

// The goal, and where it is to take off a loose seal that fasteners press: the part over it, too.
WayInGoal with_what_lies_over(const bench::Bench& bench, WayInGoal goal);

// Moves each act that takes off what lies loose, and that is done by hand for the sake of a part
// that comes away or of the goal, behind the act that takes the part away. Its reasons go with it.
// Where the bench does not allow the acts in that order, nothing is moved.
void put_loose_last(const bench::Bench& bench, WayIn& way);

} // namespace matchmark::plan
