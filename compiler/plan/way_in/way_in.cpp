// The way in as it is told: the least acts, in the order of work, with times and reasons.
#include "plan/way_in/way_in.hpp"

#include "plan/order_of_work.hpp"
#include "plan/safety_first.hpp"
#include "plan/way_in/least.hpp"
#include "plan/way_in/reasons.hpp"
#include "plan/way_in/times.hpp"
#include "plan/way_in/trade_order.hpp"

#include <algorithm>

namespace matchmark::plan {

namespace {

class Finder {
public:
    Finder(const bench::Bench& on, const WayInGoal& goal, const WayInLimits& limits)
        : goal_(with_what_lies_over(on, goal)), limits_(limits), graph_(task_graph(on, goal_)),
          risks_(risks_of(graph_)) {}

    WayIn run();

private:
    void tell(const std::vector<TaskIndex>& acts);
    void reorder(WorkOrder& work, const std::vector<TaskIndex>& wanted) const;

    const WayInGoal goal_;
    const WayInLimits& limits_;
    TaskGraph graph_;
    Risks risks_;
    WayIn result_;
    std::int64_t at_least_ = 0;
};

// The acts as they follow from each other: each as soon as the ones before it allow.
void Finder::reorder(WorkOrder& work, const std::vector<TaskIndex>& wanted) const {
    if (work.order.size() != wanted.size())
        return;
    bench::State state = bench::assembled(*graph_.bench);
    std::vector<TaskIndex> order;
    std::vector<std::string> tools;
    std::vector<TaskIndex> left = wanted;
    while (!left.empty()) {
        const auto next = std::find_if(left.begin(), left.end(), [&](TaskIndex task) {
            const Task& what = graph_.tasks[task];
            return state.slots[graph_.units[what.unit].slot] == what.from &&
                   possible(graph_, state, task);
        });
        if (next == left.end())
            return;
        const auto was = std::find(work.order.begin(), work.order.end(), *next);
        tools.push_back(work.tools[static_cast<std::size_t>(was - work.order.begin())]);
        bench::perform(*graph_.bench, state, graph_.tasks[*next].act);
        order.push_back(*next);
        left.erase(next);
    }
    work.order = std::move(order);
    work.tools = std::move(tools);
}

void Finder::tell(const std::vector<TaskIndex>& acts) {
    const auto reasoned = by_reason(graph_, acts);
    WorkOrder work = order_of_work(graph_, risks_, reasoned);
    if (limits_.by_reason)
        reorder(work, reasoned);
    put_safety_first(graph_, work, !limits_.by_reason);
    result_.tool_changes = work.changes;
    result_.tool_changes_at_least = work.at_least;
    result_.turnings = work.turnings;
    result_.turnings_at_least = work.turnings_at_least;
    result_.reasons = reasons_of(graph_, risks_, work.order);
    for (std::size_t i = 0; i < work.order.size(); ++i) {
        const Task& task = graph_.tasks[work.order[i]];
        result_.acts.push_back({task.act, task.from, 0, 0, work.tools[i]});
    }
    put_in_trade_order(*graph_.bench, result_);
    tell_times(*graph_.bench->model, result_);
    if (limits_.count_orders)
        result_.orders = count_orders(graph_, work.order);
    const std::int64_t milliseconds = milliseconds_of(at_least_);
    result_.at_least_seconds =
        result_.proof == Proof::least ? result_.seconds : static_cast<double>(milliseconds) / 1000;
}

WayIn Finder::run() {
    LeastLimits limits;
    limits.seconds = limits_.seconds;
    const Least least = LeastWay(graph_, risks_, goal_).find(limits);
    result_.proof = least.proof;
    if (result_.proof == Proof::impossible)
        result_.obstacles = obstacles_of(graph_);
    if (result_.proof == Proof::impossible || result_.proof == Proof::unknown)
        return std::move(result_);
    at_least_ = least.at_least;
    result_.proofs = least.sets.size();
    result_.with_choice = static_cast<std::size_t>(std::count_if(
        least.sets.begin(), least.sets.end(), [](const Cut& set) { return set.tasks.size() > 1; }));
    tell(least.order);
    return std::move(result_);
}

} // namespace

WayIn way_in(const bench::Bench& bench, const WayInGoal& goal, const WayInLimits& limits) {
    return Finder(bench, goal, limits).run();
}

} // namespace matchmark::plan
