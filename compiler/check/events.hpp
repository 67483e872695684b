// What happens in a procedure, in order.
#pragma once

#include "check/walk.hpp"

namespace matchmark::check {

// Fills the events of the walk: of its variant's steps each test, and each action, a verb on
// several targets once for each.
void list_events(Walk& walk);

} // namespace matchmark::check
