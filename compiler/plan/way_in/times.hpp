// What the acts of a way in take where they stand, tool by tool and side by side, and what it takes
// to put all back.
#pragma once

#include "plan/way_in/way_in.hpp"

namespace matchmark::plan {

// Fills in the times of acts that have their order and tools: each act's own, and the sums.
void tell_times(const model::Model& model, WayIn& way);

} // namespace matchmark::plan
