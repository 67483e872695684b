// What came off and never went back.
#pragma once

#include "check/walk.hpp"

namespace matchmark::check {

// Fills walk.left_off, and goes on as if each had been put back at the last point where it could:
// the walk's later states follow.
void find_left_off(Walk& walk);

} // namespace matchmark::check
