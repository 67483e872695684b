// The screws that lie together on the tray while a guide is done.
#pragma once

#include "check/walk.hpp"

#include <functional>
#include <vector>

namespace matchmark::check {

// Fasteners that come off, in the order in which they do.
std::vector<model::ItemId> screws_taken_off(const Walk& walk);

struct ScrewPair {
    model::ItemId first; // comes off before the other
    model::ItemId second;
};

// Each pair of screws that come off for which `asked` holds, in order. It is asked once for each
// two sorts of screw, for it can know only what the device's file says of them: a large device has
// thousands of screws, and few sorts. Screws of one sort make no pair.
std::vector<ScrewPair>
pairs_taken_off(const Walk& walk,
                const std::function<bool(const model::Item&, const model::Item&)>& asked);

// Does the author say how either of them is told from what it resembles?
bool told_apart(const model::Item& one, const model::Item& other);

// Would one of the two, in the other's hole, pass the depth declared there, though it does not in
// its own?
bool harmful_swap(const model::Item& one, const model::Item& other);

} // namespace matchmark::check
