// Forward through the task graph for what follows; backward from the goal for what has to be done.
#include "plan/way_in/closure.hpp"

#include <algorithm>

namespace matchmark::plan {

namespace {

// How many acts could at most stand in a cut through the node: the narrowest is taken.
std::uint32_t width(const TaskGraph& graph, NodeIndex index) {
    constexpr std::uint32_t most = 1'000'000;
    const Node& node = graph.nodes[index];
    if (node.sort == NodeSort::task)
        return 1;
    std::uint32_t total = node.sort == NodeSort::all ? most : 0;
    for (const NodeIndex child : node.children) {
        const std::uint32_t part = width(graph, child);
        total = node.sort == NodeSort::all ? std::min(total, part) : std::min(most, total + part);
    }
    return total;
}

} // namespace

Closure::Closure(const TaskGraph& graph)
    : graph_(&graph), waits_for_(graph.waits), allowed_(graph.tasks.size()) {
    for (const NodeIndex node : graph.let_go) {
        if (waits_for_[node] == 0)
            continue;
        waits_for_[node] = 0;
        settle(node);
    }
}

// Tells those above the node, which is now reached.
void Closure::settle(NodeIndex node) {
    queue_.push_back(node);
    while (!queue_.empty()) {
        const NodeIndex here = queue_.back();
        queue_.pop_back();
        for (const NodeIndex above : graph_->above[here]) {
            if (waits_for_[above] != 0 && --waits_for_[above] == 0)
                queue_.push_back(above);
        }
    }
}

bool Closure::ready(TaskIndex task) const {
    const std::uint32_t waits = waits_for_[graph_->tasks[task].done];
    return waits == 0 || (waits == 1 && !allowed_[task]);
}

void Closure::allow(TaskIndex task) {
    if (allowed_[task])
        return;
    allowed_[task] = true;
    const NodeIndex node = graph_->tasks[task].done;
    if (--waits_for_[node] == 0)
        settle(node);
}

Cut Closure::cut(const std::vector<bool>& barred) const {
    Cut found;
    std::vector<bool> seen(graph_->nodes.size());
    std::vector<NodeIndex> stack{graph_->goal};
    seen[graph_->goal] = true;
    const auto visit = [&](NodeIndex node) {
        if (!reached(node) && !seen[node]) {
            seen[node] = true;
            stack.push_back(node);
        }
    };
    while (!stack.empty()) {
        const NodeIndex here = stack.back();
        stack.pop_back();
        const Node& node = graph_->nodes[here];
        if (!graph_->rests_on.empty()) {
            const auto& on = graph_->rests_on[here];
            found.rests_on.insert(found.rests_on.end(), on.begin(), on.end());
        }
        if (node.sort == NodeSort::task && !barred.empty() && barred[graph_->task_of_node[here]])
            continue;
        if (node.sort == NodeSort::task && ready(graph_->task_of_node[here])) {
            found.tasks.push_back(graph_->task_of_node[here]);
            continue;
        }
        if (node.sort == NodeSort::any || node.sort == NodeSort::fact) {
            std::for_each(node.children.begin(), node.children.end(), visit);
            continue;
        }
        std::optional<NodeIndex> narrowest;
        for (const NodeIndex child : node.children) {
            if (!reached(child) && (!narrowest || graph_->width[child] < graph_->width[*narrowest]))
                narrowest = child;
        }
        if (narrowest)
            visit(*narrowest);
    }
    const auto in_order = [](auto& list) {
        std::sort(list.begin(), list.end());
        list.erase(std::unique(list.begin(), list.end()), list.end());
    };
    in_order(found.tasks);
    in_order(found.rests_on);
    return found;
}

namespace {

// What each node waits for before anything is done; what waits for nothing is reached.
std::vector<std::uint32_t> waits_at_first(const TaskGraph& graph) {
    std::vector<std::uint32_t> waits(graph.nodes.size());
    std::vector<NodeIndex> reached;
    for (NodeIndex i = 0; i < graph.nodes.size(); ++i) {
        const Node& node = graph.nodes[i];
        const auto children = static_cast<std::uint32_t>(node.children.size());
        const bool conjunct = node.sort == NodeSort::all || node.sort == NodeSort::task;
        waits[i] = !conjunct ? 1 : node.sort == NodeSort::task ? children + 1 : children;
        if (waits[i] == 0)
            reached.push_back(i);
    }
    while (!reached.empty()) {
        const NodeIndex here = reached.back();
        reached.pop_back();
        for (const NodeIndex above : graph.above[here]) {
            if (waits[above] != 0 && --waits[above] == 0)
                reached.push_back(above);
        }
    }
    return waits;
}

} // namespace

void finish(TaskGraph& graph) {
    graph.above.assign(graph.nodes.size(), {});
    graph.width.resize(graph.nodes.size());
    for (NodeIndex i = 0; i < graph.nodes.size(); ++i) {
        for (const NodeIndex child : graph.nodes[i].children)
            graph.above[child].push_back(i);
        graph.width[i] = width(graph, i);
    }
    graph.waits = waits_at_first(graph);
}

} // namespace matchmark::plan
