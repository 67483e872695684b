// Acts that a fitter does later than the order of work has them: an O-ring is lifted when the cover
// over it is off, a protective earth parted when nothing else is joined there.
#pragma once

#include "plan/way_in/way_in.hpp"

namespace matchmark::plan {

// The goal, and where it is to take off a loose seal that fasteners press: the part over it, too.
WayInGoal with_what_lies_over(const bench::Bench& bench, WayInGoal goal);

// Moves each act that takes off what lies loose, and that is done by hand for the sake of a part
// that comes away or of the goal, behind the act that takes the part away; and each that parts what
// is parted last behind those that part the other connectors of its part. The reasons go with the
// acts, and the tools taken up are counted anew. Where the bench does not allow that, an act goes a
// little further on, or stays.
void put_later(const bench::Bench& bench, WayIn& way);

} // namespace matchmark::plan
