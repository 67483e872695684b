// What a drafted way in does for safety beyond the shortest.
#pragma once

#include "plan/way_in/way_in.hpp"

namespace matchmark::plan {

// Before anything is taken apart, what passes by itself (a fan that runs out, heat) is waited for
// after the sources are cut off, where the device lets that be. A danger that the way back alone
// would meet is made safe at the end: each round makes one more item safe.
WayIn made_safe(const bench::Bench& on, WayIn way);

} // namespace matchmark::plan
