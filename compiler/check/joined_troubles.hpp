// What one line forgotten makes is one trouble, though the walk meets it more than once.
#pragma once

#include "check/walk.hpp"

namespace matchmark::check {

// A supply that is not locked off is met as live and then as not proved dead, by the same act; and
// where the guide starts it up again, as still locked off by the walk. The first of them is told,
// with the lines that all of them lack. Called once, when the walk is done.
void join_troubles(Walk& walk);

} // namespace matchmark::check
