// Goes through the work tool by tool: with a tool in hand, all that it can do and that can do no
// harm is done before the next one is taken up.
#include "plan/order_of_work.hpp"

#include "plan/way_in_closure.hpp"

#include <algorithm>
#include <set>

namespace matchmark::plan {

namespace {

// How far the work has come.
struct Stage {
    bench::State state;
    Closure closure;
    std::vector<TaskIndex> order;
    std::vector<std::string> tools;
};

class Ordering {
public:
    Ordering(const TaskGraph& graph, const Risks& risks, const std::vector<TaskIndex>& tasks,
             std::size_t most_states)
        : graph_(graph), risks_(risks), tasks_(tasks), most_states_(most_states),
          allowed_(graph.tasks.size()) {
        for (const TaskIndex task : tasks_)
            allowed_[task] = true;
        choose_tools();
    }

    WorkOrder run();

private:
    using Layer = std::vector<Stage>;

    void choose_tools();
    [[nodiscard]] bool can(const Stage& stage, TaskIndex task) const;
    [[nodiscard]] bool does(const std::string& tool, TaskIndex task) const;
    void perform(Stage& stage, TaskIndex task, const std::string& tool) const;
    void do_all(Stage stage, const std::string& tool, Layer& layer);
    [[nodiscard]] bool complete(const Stage& stage) const {
        return stage.order.size() == tasks_.size();
    }
    [[nodiscard]] std::size_t tools_left(const Stage& stage) const;
    Layer next_layer(const Layer& layer);
    WorkOrder turn_by_turn(Stage stage, std::size_t changes);
    [[nodiscard]] WorkOrder done(const Stage& stage, std::size_t changes,
                                 std::size_t at_least) const;

    const TaskGraph& graph_;
    const Risks& risks_;
    const std::vector<TaskIndex>& tasks_;
    std::size_t most_states_;
    std::vector<bool> allowed_;
    std::vector<std::string> tools_; // those worth taking up
    std::set<std::pair<std::vector<model::StateId>, std::string>> seen_;
};

// A tool that does nothing that another one does not do as well need not be taken up.
void Ordering::choose_tools() {
    std::map<std::string, std::vector<TaskIndex>> does;
    std::vector<std::string> by_name; // in the order of the work
    for (const TaskIndex task : tasks_) {
        for (const std::string& tool : graph_.tasks[task].tools) {
            if (!does.contains(tool))
                by_name.push_back(tool);
            does[tool].push_back(task);
        }
    }
    for (auto& [tool, jobs] : does)
        std::sort(jobs.begin(), jobs.end());
    for (std::size_t i = 0; i < by_name.size(); ++i) {
        const auto& jobs = does[by_name[i]];
        bool worth = true;
        for (std::size_t j = 0; j < by_name.size() && worth; ++j) {
            const auto& others = does[by_name[j]];
            worth = i == j ||
                    !std::includes(others.begin(), others.end(), jobs.begin(), jobs.end()) ||
                    (others == jobs && i < j);
        }
        if (worth)
            tools_.push_back(by_name[i]);
    }
}

bool Ordering::can(const Stage& stage, TaskIndex task) const {
    const Task& what = graph_.tasks[task];
    return !stage.closure.allowed(task) &&
           stage.state.slots[graph_.units[what.unit].slot] == what.from &&
           stage.closure.ready(task) && possible(graph_, stage.state, task);
}

bool Ordering::does(const std::string& tool, TaskIndex task) const {
    const auto& fit = graph_.tasks[task].tools;
    return fit.empty() || std::find(fit.begin(), fit.end(), tool) != fit.end();
}

void Ordering::perform(Stage& stage, TaskIndex task, const std::string& tool) const {
    bench::perform(*graph_.bench, stage.state, graph_.tasks[task].act);
    stage.closure.allow(task);
    stage.order.push_back(task);
    stage.tools.push_back(graph_.tasks[task].tools.empty() ? std::string() : tool);
}

// Adds to the layer what the stage becomes with this tool in hand; acts that may do harm are done
// and left undone.
void Ordering::do_all(Stage stage, const std::string& tool, Layer& layer) {
    std::vector<TaskIndex> trials;
    for (bool moved = true; moved;) {
        moved = false;
        trials.clear();
        for (const TaskIndex task : tasks_) {
            if (!does(tool, task) || !can(stage, task))
                continue;
            if (risky(graph_, risks_, stage.state, allowed_, task)) {
                trials.push_back(task);
                continue;
            }
            perform(stage, task, tool);
            moved = true;
            break;
        }
    }
    // The tool in hand matters only to a trial that takes it.
    const bool tool_matters = std::any_of(trials.begin(), trials.end(), [&](TaskIndex task) {
        return !graph_.tasks[task].tools.empty();
    });
    if (!seen_.emplace(stage.state.slots, tool_matters ? tool : std::string()).second ||
        seen_.size() > most_states_)
        return;
    for (const TaskIndex task : trials) {
        Stage after = stage;
        perform(after, task, tool);
        do_all(std::move(after), tool, layer);
    }
    layer.push_back(std::move(stage));
}

// At least so many tools have still to be taken up: acts that share no tool with each other.
std::size_t Ordering::tools_left(const Stage& stage) const {
    std::vector<std::string> taken;
    std::size_t count = 0;
    for (const TaskIndex task : tasks_) {
        const auto& fit = graph_.tasks[task].tools;
        const bool apart = std::none_of(fit.begin(), fit.end(), [&](const std::string& tool) {
            return std::find(taken.begin(), taken.end(), tool) != taken.end();
        });
        if (stage.closure.allowed(task) || fit.empty() || !apart)
            continue;
        taken.insert(taken.end(), fit.begin(), fit.end());
        ++count;
    }
    return count;
}

Ordering::Layer Ordering::next_layer(const Layer& layer) {
    Layer next;
    for (const Stage& stage : layer) {
        for (const std::string& tool : tools_) {
            const bool useful = std::any_of(tasks_.begin(), tasks_.end(), [&](TaskIndex task) {
                return !graph_.tasks[task].tools.empty() && does(tool, task) && can(stage, task);
            });
            if (useful)
                do_all(stage, tool, next);
        }
    }
    return next;
}

WorkOrder Ordering::done(const Stage& stage, std::size_t changes, std::size_t at_least) const {
    return {stage.order, stage.tools, changes, at_least};
}

// Past the limit: at each turn the tool that does most.
WorkOrder Ordering::turn_by_turn(Stage stage, std::size_t changes) {
    const std::size_t at_least = changes + tools_left(stage);
    while (!complete(stage)) {
        seen_.clear();
        Layer best;
        for (Stage& next : next_layer({stage})) {
            if (best.empty() || next.order.size() > best.front().order.size()) {
                best.clear();
                best.push_back(std::move(next));
            }
        }
        if (best.empty() || best.front().order.size() <= stage.order.size())
            return {};
        stage = std::move(best.front());
        ++changes;
    }
    return done(stage, changes, at_least);
}

WorkOrder Ordering::run() {
    Layer layer;
    do_all({bench::assembled(*graph_.bench), Closure(graph_), {}, {}}, {}, layer);
    const Stage start = layer.empty() ? Stage{{}, Closure(graph_), {}, {}} : layer.front();
    for (std::size_t changes = 0; !layer.empty(); ++changes) {
        const auto complete_one = std::find_if(layer.begin(), layer.end(),
                                               [&](const Stage& stage) { return complete(stage); });
        if (complete_one != layer.end())
            return done(*complete_one, changes, changes);
        if (seen_.size() > most_states_)
            return turn_by_turn(start, 0);
        layer = next_layer(layer);
    }
    return {};
}

} // namespace

WorkOrder order_of_work(const TaskGraph& graph, const Risks& risks,
                        const std::vector<TaskIndex>& tasks, std::size_t most_states) {
    return Ordering(graph, risks, tasks, most_states).run();
}

} // namespace matchmark::plan
