// Reads the reasons out of the task graph.
#include "plan/way_in/reasons.hpp"

#include "plan/way_in/closure.hpp"

#include <algorithm>
#include <deque>
#include <functional>

namespace matchmark::plan {

namespace {

constexpr std::uint32_t not_reached = 0xffffffffU;

// When each node is reached, as the acts are done in this order: 0 at the start.
std::vector<std::uint32_t> times_of(const TaskGraph& graph, const std::vector<TaskIndex>& order) {
    std::vector<std::uint32_t> times(graph.nodes.size(), not_reached);
    Closure closure(graph);
    const auto note = [&](std::uint32_t time) {
        for (NodeIndex i = 0; i < times.size(); ++i) {
            if (times[i] == not_reached && closure.reached(i))
                times[i] = time;
        }
    };
    note(0);
    for (std::uint32_t i = 0; i < order.size(); ++i) {
        closure.allow(order[i]);
        note(i + 1);
    }
    return times;
}

struct Support {
    TaskIndex task = 0;
    ActReason reason;
};

class Supports {
public:
    Supports(const TaskGraph& graph, const std::vector<TaskIndex>& order)
        : graph_(graph), times_(times_of(graph, order)) {}

    // The acts by which the node came to be reached, each with what it removes.
    [[nodiscard]] std::vector<Support> of(NodeIndex node) const {
        std::vector<Support> found;
        collect(node, {}, found);
        return found;
    }

private:
    void collect(NodeIndex index, ActReason reason, std::vector<Support>& found) const {
        const Node& node = graph_.nodes[index];
        if (times_[index] == 0 || times_[index] == not_reached)
            return;
        if (node.reason.item.known())
            reason = node.reason;
        if (node.sort == NodeSort::task) {
            found.push_back({graph_.task_of_node[index], reason});
            return;
        }
        if (node.sort == NodeSort::all) {
            for (const NodeIndex child : node.children)
                collect(child, reason, found);
            return;
        }
        const auto first =
            std::min_element(node.children.begin(), node.children.end(),
                             [&](NodeIndex a, NodeIndex b) { return times_[a] < times_[b]; });
        if (first != node.children.end())
            collect(*first, reason, found);
    }

    const TaskGraph& graph_;
    std::vector<std::uint32_t> times_;
};

// All that a task waits for; its own node is the task.
std::vector<Support> supports_of_task(const TaskGraph& graph, const Supports& supports,
                                      TaskIndex task) {
    std::vector<Support> found;
    for (const NodeIndex child : graph.nodes[graph.tasks[task].done].children) {
        for (const Support& support : supports.of(child))
            found.push_back(support);
    }
    return found;
}

// An act that only the bench asks for: without it, a later one would meet a danger.
ActReason by_trial(const TaskGraph& graph, const Risks& risks, const std::vector<TaskIndex>& order,
                   std::size_t act) {
    ActReason reason;
    const model::ItemId item = graph.units[graph.tasks[order[act]].unit].item;
    reason.item = reason.met = item;
    for (const Risks::Danger& danger : risks.dangers) {
        if (danger.item == item)
            reason.sort = ReasonSort::hazard;
    }
    bench::State state = bench::assembled(*graph.bench);
    for (std::size_t i = 0; i < order.size(); ++i) {
        if (i == act)
            continue;
        if (!possible(graph, state, order[i])) {
            reason.for_act = i;
            reason.met = graph.units[graph.tasks[order[i]].unit].item;
            break;
        }
        bench::perform(*graph.bench, state, graph.tasks[order[i]].act);
    }
    return reason;
}

} // namespace

std::vector<ActReason> reasons_of(const TaskGraph& graph, const Risks& risks,
                                  const std::vector<TaskIndex>& order) {
    const Supports supports(graph, order);
    std::vector<std::optional<ActReason>> found(order.size());
    std::deque<std::size_t> queue;
    const auto give = [&](const Support& support, std::optional<std::size_t> for_act) {
        const auto at = static_cast<std::size_t>(
            std::find(order.begin(), order.end(), support.task) - order.begin());
        if (at == order.size() || found[at])
            return;
        found[at] = support.reason;
        found[at]->for_act = for_act;
        queue.push_back(at);
    };
    const auto follow = [&] {
        for (; !queue.empty(); queue.pop_front()) {
            for (const Support& support : supports_of_task(graph, supports, order[queue.front()]))
                give(support, queue.front());
        }
    };
    for (const Support& support : supports.of(graph.goal))
        give(support, std::nullopt);
    follow();
    std::vector<ActReason> reasons;
    for (std::size_t i = order.size(); i-- > 0;) {
        if (found[i])
            continue;
        found[i] = by_trial(graph, risks, order, i);
        queue.push_back(i);
        follow();
    }
    std::transform(found.begin(), found.end(), std::back_inserter(reasons),
                   [](const auto& reason) { return *reason; });
    return reasons;
}

std::vector<TaskIndex> by_reason(const TaskGraph& graph, const std::vector<TaskIndex>& order) {
    const Supports supports(graph, order);
    std::vector<TaskIndex> told;
    std::vector<bool> seen(graph.tasks.size());
    std::vector<std::uint32_t> heights(graph.tasks.size());
    const std::function<std::uint32_t(TaskIndex)> height = [&](TaskIndex task) {
        if (heights[task] != 0)
            return heights[task];
        std::uint32_t most = 0;
        for (const Support& support : supports_of_task(graph, supports, task))
            most = std::max(most, height(support.task));
        return heights[task] = most + 1;
    };
    // What takes the longest way comes first, so that what is simply undone stands beside the part
    // that it holds.
    const auto longest_first = [&](std::vector<Support> found) {
        std::stable_sort(found.begin(), found.end(), [&](const Support& a, const Support& b) {
            return height(a.task) > height(b.task);
        });
        return found;
    };
    const std::function<void(TaskIndex)> visit = [&](TaskIndex task) {
        if (seen[task])
            return;
        seen[task] = true;
        for (const Support& support : longest_first(supports_of_task(graph, supports, task)))
            visit(support.task);
        told.push_back(task);
    };
    for (const Support& support : longest_first(supports.of(graph.goal)))
        visit(support.task);
    std::vector<TaskIndex> result;
    for (const TaskIndex task : order) {
        if (!seen[task])
            result.push_back(task); // only the bench asks for it: as early as may be
    }
    result.insert(result.end(), told.begin(), told.end());
    // What is done from outside to a supply or a charge is seen to before anything is opened.
    std::stable_partition(result.begin(), result.end(), [&](TaskIndex task) {
        const Unit& unit = graph.units[graph.tasks[task].unit];
        const model::Model& model = *graph.bench->model;
        const model::Kind& kind = model.kind_of(unit.item);
        const model::Verb& verb = kind.verbs[graph.tasks[task].verb];
        const bool cuts = !model.item(unit.item).feeds.empty() && (verb.from & kind.live) != 0 &&
                          !model::contains(kind.live, verb.to);
        return verb.from_outside && (kind.role == model::Role::energy || unit.set != 0 || cuts);
    });
    return result;
}

std::vector<Obstacle> obstacles_of(const TaskGraph& graph) {
    Closure closure(graph);
    for (TaskIndex task = 0; task < graph.tasks.size(); ++task)
        closure.allow(task);
    std::vector<Obstacle> found;
    if (closure.goal_reached())
        return found; // the graph sees a way, and the bench does not
    std::vector<bool> seen(graph.nodes.size());
    ActReason reason;
    for (NodeIndex here = graph.goal;;) {
        const Node& node = graph.nodes[here];
        if (node.reason.item.known())
            reason = node.reason;
        if (node.sort == NodeSort::task) {
            const model::ItemId item = graph.units[graph.tasks[graph.task_of_node[here]].unit].item;
            found.push_back({item, reason, seen[here], false});
            if (seen[here])
                return found; // round a ring
            seen[here] = true;
        }
        std::optional<NodeIndex> next;
        for (const NodeIndex child : node.children) {
            const bool better = !next || (node.sort == NodeSort::fact && seen[*next]);
            if (!closure.reached(child) && better)
                next = child;
        }
        if (!next) {
            found.push_back({reason.item, reason, false, true});
            return found;
        }
        here = *next;
    }
}

} // namespace matchmark::plan
