// What a drafted way in does for safety beyond the shortest.
#pragma once

#include "plan/way_in/way_in.hpp"

namespace matchmark::plan {

// A danger that the way back alone would meet is made safe at the end: each round makes one more
// item safe.
WayIn made_safe(const bench::Bench& on, WayIn way);

} // namespace matchmark::plan
