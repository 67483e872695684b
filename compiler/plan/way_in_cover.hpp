// The cheapest choice of acts that takes one from each of many sets: exact, by branch and bound.
#pragma once

#include "plan/way_in_tasks.hpp"

#include <functional>

namespace matchmark::plan {

using TaskSets = std::vector<std::vector<TaskIndex>>;

struct Cover {
    std::vector<TaskIndex> tasks; // in order
    std::int64_t weight = 0;
    std::int64_t at_least = 0; // no choice weighs less; equal to `weight` unless the time ran out
};

// `out_of_time` is asked now and then; true ends the search with what was found so far.
Cover least_cover(const std::vector<Task>& tasks, const TaskSets& sets,
                  const std::function<bool()>& out_of_time);

// Quickly, and not always the cheapest.
Cover quick_cover(const std::vector<Task>& tasks, const TaskSets& sets);

} // namespace matchmark::plan
