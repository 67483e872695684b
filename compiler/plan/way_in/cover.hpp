// The cheapest choice of acts that takes one from each of many sets: exact, by branch and bound.
#pragma once

#include "plan/way_in/tasks.hpp"

#include <functional>
#include <limits>
#include <span>

namespace matchmark::plan {

// Many small sets, one after the other.
class TaskSets {
public:
    void add(std::span<const TaskIndex> set) {
        tasks_.insert(tasks_.end(), set.begin(), set.end());
        ends_.push_back(tasks_.size());
    }
    [[nodiscard]] std::size_t size() const { return ends_.size(); }
    [[nodiscard]] std::span<const TaskIndex> operator[](std::size_t i) const {
        const std::size_t begin = i == 0 ? 0 : ends_[i - 1];
        return std::span(tasks_).subspan(begin, ends_[i] - begin);
    }

private:
    std::vector<TaskIndex> tasks_;
    std::vector<std::size_t> ends_;
};

struct Cover {
    std::vector<TaskIndex> tasks; // in order
    std::int64_t weight = 0;
    std::int64_t at_least = 0; // no choice weighs less; equal to `weight` unless the time ran out
};

// `out_of_time` is asked now and then; true ends the search with what was found so far. When no
// choice is lighter than `lighter_than`, it may end too, with that or more in `at_least`.
Cover least_cover(const std::vector<Task>& tasks, const TaskSets& sets,
                  const std::function<bool()>& out_of_time,
                  std::int64_t lighter_than = std::numeric_limits<std::int64_t>::max());

// Quickly, and not always the cheapest.
Cover quick_cover(const std::vector<Task>& tasks, const TaskSets& sets);

} // namespace matchmark::plan
