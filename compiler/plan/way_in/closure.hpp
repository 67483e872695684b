// What follows, in the task graph, from a set of acts that may be done; and what keeps the goal
// from following.
#pragma once

#include "plan/way_in/tasks.hpp"

namespace matchmark::plan {

// Acts of which one at least has to be done, and the relations without which that need not be so.
struct Cut {
    std::vector<TaskIndex> tasks;
    std::vector<RelationIndex> rests_on; // in order; empty when the graph knows no relations
};

class Closure {
public:
    // Nothing is allowed yet; what needs no act, or is let go, is reached.
    explicit Closure(const TaskGraph& graph);

    void allow(TaskIndex task);
    [[nodiscard]] bool allowed(TaskIndex task) const { return allowed_[task]; }
    [[nodiscard]] bool reached(NodeIndex node) const { return waits_for_[node] == 0; }
    // All that the task waits for is reached; it may or may not be allowed.
    [[nodiscard]] bool ready(TaskIndex task) const;
    [[nodiscard]] bool goal_reached() const { return reached(graph_->goal); }

    // When the goal is not reached: acts that are ready and not allowed, one of which has to be
    // done on any way to the goal that does without the `barred` ones. Empty: there is no way.
    [[nodiscard]] Cut cut(const std::vector<bool>& barred = {}) const;

private:
    void settle(NodeIndex node);

    const TaskGraph* graph_;
    std::vector<std::uint32_t> waits_for_; // children still out, or 0; a task also waits for leave
    std::vector<bool> allowed_;
    std::vector<NodeIndex> queue_; // room for settle
};

} // namespace matchmark::plan
