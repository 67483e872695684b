// An item is unavoidable when the goal does not follow from all the acts on other items.
#include "plan/unavoidable.hpp"

#include "plan/way_in/closure.hpp"

#include <algorithm>

namespace matchmark::plan {

using model::ItemId;

std::vector<std::vector<ItemId>> unavoidable(const bench::Bench& bench,
                                             const std::vector<WayInGoal>& goals,
                                             const std::vector<std::vector<ItemId>>& candidates) {
    std::vector<std::vector<ItemId>> result(goals.size());
    std::vector<NodeIndex> goal_nodes;
    const TaskGraph graph = task_graph(bench, goals, {}, goal_nodes);
    for (std::uint32_t i = 0; i < bench.model->items.size(); ++i) {
        const ItemId item{i};
        const auto is_asked = [&](const auto& list) {
            return std::find(list.begin(), list.end(), item) != list.end();
        };
        if (std::none_of(candidates.begin(), candidates.end(), is_asked))
            continue;
        Closure without(graph);
        for (TaskIndex task = 0; task < graph.tasks.size(); ++task) {
            const Unit& unit = graph.units[graph.tasks[task].unit];
            if (unit.item != item || unit.set != 0)
                without.allow(task);
        }
        for (std::size_t goal = 0; goal < goals.size(); ++goal) {
            if (is_asked(candidates[goal]) && !without.reached(goal_nodes[goal]))
                result[goal].push_back(item);
        }
    }
    return result;
}

} // namespace matchmark::plan
