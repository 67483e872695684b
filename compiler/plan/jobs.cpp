// Plans from where an earlier job left the device.
#include "plan/jobs.hpp"

#include "plan/way_in/least.hpp"
#include "plan/way_in/times.hpp"

#include <algorithm>

namespace matchmark::plan {

WayIn way_on(const bench::Bench& bench, const std::vector<PlannedAct>& done,
             const WayInGoal& goal) {
    const TaskGraph graph = task_graph(bench, goal);
    const Risks risks = risks_of(graph);
    std::vector<TaskIndex> before;
    for (const PlannedAct& act : done) {
        const auto task =
            std::find_if(graph.tasks.begin(), graph.tasks.end(), [&](const Task& one) {
                return one.act == act.act && one.from == act.from;
            });
        if (task != graph.tasks.end())
            before.push_back(static_cast<TaskIndex>(task - graph.tasks.begin()));
    }
    const Least least = LeastWay(graph, risks, goal, before).find({});
    WayIn way;
    way.proof = least.proof;
    way.proofs = least.sets.size();
    for (const TaskIndex task : least.order) {
        const Task& what = graph.tasks[task];
        way.acts.push_back(
            {what.act, what.from, 0, 0, what.tools.empty() ? std::string() : what.tools.front()});
    }
    tell_times(*bench.model, way);
    const std::int64_t milliseconds = milliseconds_of(least.at_least);
    way.at_least_seconds =
        way.proof == Proof::least ? way.seconds : static_cast<double>(milliseconds) / 1000;
    return way;
}

std::vector<Job> jobs_in_turn(const bench::Bench& bench, const std::vector<model::ItemId>& items,
                              bool expose, const std::vector<PlannedAct>& done) {
    std::vector<Job> jobs;
    std::vector<PlannedAct> so_far = done;
    for (const model::ItemId item : items) {
        const WayInGoal goal{{item}, expose};
        jobs.push_back({item, way_on(bench, {}, goal), way_on(bench, so_far, goal)});
        const auto& added = jobs.back().added.acts;
        so_far.insert(so_far.end(), added.begin(), added.end());
    }
    return jobs;
}

} // namespace matchmark::plan
