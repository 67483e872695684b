// Why each act of a way in is done, and what cannot be got past when there is none.
#pragma once

#include "plan/way_in/search.hpp"

namespace matchmark::plan {

// For the acts in this order: for each, the nearest act, or the goal, for whose sake it is done.
std::vector<ActReason> reasons_of(const TaskGraph& graph, const Risks& risks,
                                  const std::vector<TaskIndex>& order);

// The acts in the order in which the reasons lead to them: what frees a thing stands beside it.
std::vector<TaskIndex> by_reason(const TaskGraph& graph, const std::vector<TaskIndex>& order);

// Down from the goal, one thing that waits for another, until nothing more can be done.
std::vector<Obstacle> obstacles_of(const TaskGraph& graph);

} // namespace matchmark::plan
