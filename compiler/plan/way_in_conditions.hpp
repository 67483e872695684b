// The conditions of docs/semantics.md as nodes of the task graph.
#pragma once

#include "plan/way_in_tasks.hpp"

namespace matchmark::plan {

// Adds the nodes of every fact, task and condition, and of the goal.
void add_conditions(TaskGraph& graph, const WayInGoal& goal);

} // namespace matchmark::plan
