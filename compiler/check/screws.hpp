// The screws that lie together on the tray while a guide is done.
#pragma once

#include "check/walk.hpp"

#include <vector>

namespace matchmark::check {

// Fasteners that come off, in the order in which they do.
std::vector<model::ItemId> screws_taken_off(const Walk& walk);

// Does the author say how either of them is told from what it resembles?
bool told_apart(const model::Item& one, const model::Item& other);

// Would one of the two, in the other's hole, pass the depth declared there, though it does not in
// its own?
bool harmful_swap(const model::Item& one, const model::Item& other);

} // namespace matchmark::check
