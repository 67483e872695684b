// What came off and never went back, and the last point at which it still could have.
#pragma once

#include "check/walk.hpp"

#include <vector>

namespace matchmark::check {

struct LeftOff {
    std::size_t at =
        0; // put back just before this event at the latest; the events' count: at the end
    bool closed_in = false; // because that event covers it
    std::vector<model::ItemId> items;
    std::vector<bench::Act> acts; // that put them back, in order; empty: nothing does
};

// By place.
std::vector<LeftOff> left_off(const Walk& walk);

// The event in which the item last left its assembled state.
std::optional<std::size_t> last_left(const Walk& walk, model::ItemId item);

} // namespace matchmark::check
