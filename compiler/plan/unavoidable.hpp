// What no way in can do without.
#pragma once

#include "plan/way_in/way_in.hpp"

#include <vector>

namespace matchmark::plan {

// For each goal, those of its candidates that every way in moves: without any act on the item (of
// its first set of states) the goal cannot be met. Proved on the graph of docs/planning.md, which
// leaves out what could only stand in the way; an item that is not named may still be unavoidable.
std::vector<std::vector<model::ItemId>>
unavoidable(const bench::Bench& bench, const std::vector<WayInGoal>& goals,
            const std::vector<std::vector<model::ItemId>>& candidates);

} // namespace matchmark::plan
