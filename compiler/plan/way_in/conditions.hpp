// The conditions of docs/semantics.md as nodes of the task graph.
#pragma once

#include "plan/way_in/tasks.hpp"

namespace matchmark::plan {

// Adds the nodes of every fact, task and condition, and those of the goals, which are given. With
// relations, the graph learns which of its conditions go when one of them goes.
std::vector<NodeIndex> add_conditions(TaskGraph& graph, const std::vector<WayInGoal>& goals,
                                      const std::vector<Relation>& relations);

} // namespace matchmark::plan
