// Wear limits that the work lays open: when each falls due, and whether it is measured.
#pragma once

#include "check/walk.hpp"

#include <vector>

namespace matchmark::check {

struct DueLimit {
    model::ItemId item;
    const model::WearLimit* limit = nullptr;
    std::size_t from = 0; // the event before which it first can be measured
};

// May it be measured in this state: as its `when` says, or else while the item is off its place.
bool measurable(const Walk& walk, const bench::State& state, model::ItemId item,
                const model::WearLimit& limit);

// The limits that fall due and that no line measures in time. What is renewed need not be measured,
// but for what is set on the new one: a limit with two bounds and a `when`.
std::vector<DueLimit> unmeasured(const Walk& walk);

} // namespace matchmark::check
