// Goes through the work stage by stage: with a tool in hand and a side up, all that can be done so
// and can do no harm is done before anything is changed. The stages are looked at in the order of
// the least that a whole order through them could cost, so that the first whole one is the best.
#include "plan/order_of_work.hpp"

#include "plan/order_of_work_sides.hpp"
#include "plan/way_in/closure.hpp"
#include "plan/work_time.hpp"

#include <algorithm>
#include <queue>
#include <set>
#include <tuple>

namespace matchmark::plan {

namespace {

constexpr int none = -1;  // no tool taken up yet, no side up yet; a task: any will do
constexpr int other = -2; // one that makes no difference any more

// First changes of tool, then turnings.
using Cost = std::pair<std::size_t, std::size_t>;

Cost operator+(const Cost& left, const Cost& right) {
    return {left.first + right.first, left.second + right.second};
}

// A task as the order sees it.
struct Job {
    TaskIndex task = 0;
    std::vector<int> tools; // empty: by hand
    int face = none;
};

struct Done {
    std::size_t job = 0;
    int tool = none;
};

// How far the work has come.
struct Stage {
    bench::State state;
    Closure closure;
    std::vector<bool> done; // by job
    std::size_t count = 0;  // of them
    int tool = none;
    int face = none;
    Cost cost = {};
    std::vector<Done> acts = {}; // since the stage before
};

// What is kept of a stage that waits to be looked at.
struct Waiting {
    bench::State state;
    std::vector<bool> done;
    std::size_t count = 0;
    int tool = none;
    int face = none;
    Cost cost = {};
    std::vector<Done> acts = {};
    std::size_t before = 0; // index of the stage that it came from; its own of the first
};

class Ordering {
public:
    Ordering(const TaskGraph& graph, const Risks& risks, const std::vector<TaskIndex>& tasks,
             std::size_t most_stages)
        : graph_(graph), risks_(risks), most_stages_(most_stages), allowed_(graph.tasks.size()) {
        for (const TaskIndex task : tasks)
            allowed_[task] = true;
        list_jobs(tasks);
    }

    WorkOrder run();

private:
    void list_jobs(const std::vector<TaskIndex>& tasks);
    void drop_idle_tools();
    [[nodiscard]] bool can(const Stage& stage, std::size_t job) const;
    [[nodiscard]] bool at_hand(const Stage& stage, const Job& job) const;
    [[nodiscard]] bool harmful(const Stage& stage, std::size_t job) const;
    void perform(Stage& stage, std::size_t job) const;
    void do_all(Stage& stage) const;
    void follow(const Stage& stage, std::size_t before);
    void change_and_do(const Stage& stage, std::size_t job, int tool, std::size_t before);
    void keep(Stage&& stage, std::size_t before);
    [[nodiscard]] Stage stage_of(std::size_t index) const;
    [[nodiscard]] Cost left(const Stage& stage) const;
    [[nodiscard]] std::optional<std::size_t> search(bool hurry);
    [[nodiscard]] WorkOrder order_to(std::size_t index) const;
    WorkOrder tools_then_sides();

    // The least cost of a whole order, how much is left to do, which came first; when in a hurry,
    // what is left comes first.
    using Rank = std::tuple<std::size_t, Cost, std::size_t, std::size_t>;
    using Key = std::tuple<std::vector<model::StateId>, int, int>;

    const TaskGraph& graph_;
    const Risks& risks_;
    std::size_t most_stages_;
    std::vector<bool> allowed_;
    std::vector<Job> jobs_;
    std::vector<std::string> tools_;
    std::vector<std::string> faces_;
    std::vector<Waiting> stages_;
    std::map<Key, Cost> seen_;
    std::priority_queue<Rank, std::vector<Rank>, std::greater<>> next_;
    bool hurry_ = false;
    Cost at_least_; // of any order
};

int index_in(std::vector<std::string>& names, const std::string& name) {
    const auto found = std::find(names.begin(), names.end(), name);
    if (found != names.end())
        return static_cast<int>(found - names.begin());
    names.push_back(name);
    return static_cast<int>(names.size() - 1);
}

void Ordering::list_jobs(const std::vector<TaskIndex>& tasks) {
    const model::Model& model = *graph_.bench->model;
    for (const TaskIndex task : tasks) {
        Job job;
        job.task = task;
        for (const std::string& tool : graph_.tasks[task].tools)
            job.tools.push_back(index_in(tools_, tool));
        const model::Item& item = model.item(graph_.units[graph_.tasks[task].unit].item);
        const std::string face =
            face_of(item, model.kind(item.kind).verbs[graph_.tasks[task].verb]);
        if (!face.empty())
            job.face = index_in(faces_, face);
        jobs_.push_back(std::move(job));
    }
    drop_idle_tools();
}

// A tool that does nothing that another one does not do as well need not be taken up.
void Ordering::drop_idle_tools() {
    std::vector<std::vector<std::size_t>> does(tools_.size());
    for (std::size_t i = 0; i < jobs_.size(); ++i) {
        for (const int tool : jobs_[i].tools)
            does[static_cast<std::size_t>(tool)].push_back(i);
    }
    const auto idle = [&](int tool) {
        const auto t = static_cast<std::size_t>(tool);
        for (std::size_t o = 0; o < does.size(); ++o) {
            if (o != t &&
                std::includes(does[o].begin(), does[o].end(), does[t].begin(), does[t].end()) &&
                (does[o] != does[t] || o < t))
                return true;
        }
        return false;
    };
    for (Job& job : jobs_)
        job.tools.erase(std::remove_if(job.tools.begin(), job.tools.end(), idle), job.tools.end());
}

bool Ordering::can(const Stage& stage, std::size_t job) const {
    if (stage.done[job])
        return false;
    const Task& what = graph_.tasks[jobs_[job].task];
    return stage.state.slots[graph_.units[what.unit].slot] == what.from &&
           stage.closure.ready(jobs_[job].task) && possible(graph_, stage.state, jobs_[job].task);
}

bool Ordering::at_hand(const Stage& stage, const Job& job) const {
    const bool tool = job.tools.empty() ||
                      std::find(job.tools.begin(), job.tools.end(), stage.tool) != job.tools.end();
    return tool && (job.face == none || job.face == stage.face);
}

bool Ordering::harmful(const Stage& stage, std::size_t job) const {
    return risky(graph_, risks_, stage.state, allowed_, jobs_[job].task);
}

void Ordering::perform(Stage& stage, std::size_t job) const {
    bench::perform(*graph_.bench, stage.state, graph_.tasks[jobs_[job].task].act);
    stage.closure.allow(jobs_[job].task);
    stage.done[job] = true;
    ++stage.count;
    stage.acts.push_back({job, jobs_[job].tools.empty() ? none : stage.tool});
}

// To do it now costs nothing, and to wait with it could save nothing.
void Ordering::do_all(Stage& stage) const {
    for (std::size_t job = 0; job < jobs_.size();) {
        if (at_hand(stage, jobs_[job]) && can(stage, job) && !harmful(stage, job)) {
            perform(stage, job);
            job = 0; // what reads best comes first
        } else {
            ++job;
        }
    }
}

// At least so much has still to be changed: acts that share no tool with each other or with the one
// in hand, and sides that are not up.
Cost Ordering::left(const Stage& stage) const {
    std::vector<int> taken{stage.tool};
    std::set<int> faces;
    std::size_t changes = 0;
    for (std::size_t i = 0; i < jobs_.size(); ++i) {
        const Job& job = jobs_[i];
        if (stage.done[i])
            continue;
        if (job.face != none && job.face != stage.face)
            faces.insert(job.face);
        const bool apart = std::none_of(job.tools.begin(), job.tools.end(), [&](int tool) {
            return std::find(taken.begin(), taken.end(), tool) != taken.end();
        });
        if (job.tools.empty() || !apart)
            continue;
        taken.insert(taken.end(), job.tools.begin(), job.tools.end());
        ++changes;
    }
    const bool first_is_free = stage.face == none && !faces.empty();
    return {changes, faces.size() - (first_is_free ? 1 : 0)};
}

// The stage is kept unless one like it was reached at no more cost. What is in the hand, or up,
// makes two stages differ only while some act that can be done now would leave it so.
void Ordering::keep(Stage&& stage, std::size_t before) {
    bool tool_matters = false;
    bool face_matters = false;
    for (std::size_t i = 0; i < jobs_.size(); ++i) {
        const Job& job = jobs_[i];
        const bool keeps_tool = job.tools.empty() || std::find(job.tools.begin(), job.tools.end(),
                                                               stage.tool) != job.tools.end();
        const bool keeps_face = job.face == none || job.face == stage.face;
        if ((keeps_tool && !tool_matters) || (keeps_face && !face_matters)) {
            if (!can(stage, i))
                continue;
            tool_matters = tool_matters || keeps_tool;
            face_matters = face_matters || keeps_face;
        }
    }
    Key key{stage.state.slots, tool_matters ? stage.tool : other,
            face_matters || stage.face == none ? stage.face : other};
    const auto [found, is_new] = seen_.try_emplace(std::move(key), stage.cost);
    if (!is_new && found->second <= stage.cost)
        return;
    found->second = stage.cost;
    const std::size_t to_do = jobs_.size() - stage.count;
    const Cost whole = stage.cost + left(stage);
    next_.emplace(hurry_ ? to_do : 0, whole, to_do, stages_.size());
    stages_.push_back({std::move(stage.state), std::move(stage.done), stage.count, stage.tool,
                       stage.face, stage.cost, std::move(stage.acts), before});
}

void Ordering::change_and_do(const Stage& stage, std::size_t job, int tool, std::size_t before) {
    Stage after = stage;
    after.acts.clear();
    if (tool != after.tool) {
        after.tool = tool;
        ++after.cost.first;
    }
    const int face = jobs_[job].face;
    if (face != none && face != after.face) {
        after.cost.second += after.face == none ? 0 : 1;
        after.face = face;
    }
    perform(after, job);
    do_all(after);
    keep(std::move(after), before);
}

// What can come next: an act that may do harm, or one that asks for another tool or side. Of acts
// that can do no harm and ask for the same, the first stands for all.
void Ordering::follow(const Stage& stage, std::size_t before) {
    std::set<std::pair<int, int>> begun;
    for (std::size_t i = 0; i < jobs_.size(); ++i) {
        if (!can(stage, i))
            continue;
        const Job& job = jobs_[i];
        const bool fits = job.tools.empty() || std::find(job.tools.begin(), job.tools.end(),
                                                         stage.tool) != job.tools.end();
        const bool harm = harmful(stage, i);
        const int face = job.face == none ? stage.face : job.face;
        for (const int tool : fits ? std::vector<int>{stage.tool} : job.tools) {
            if (harm || begun.emplace(tool, face).second)
                change_and_do(stage, i, tool, before);
        }
    }
}

Stage Ordering::stage_of(std::size_t index) const {
    const Waiting& kept = stages_[index];
    Stage stage{kept.state, Closure(graph_), kept.done, kept.count,
                kept.tool,  kept.face,       kept.cost, {}};
    for (std::size_t i = 0; i < jobs_.size(); ++i) {
        if (kept.done[i])
            stage.closure.allow(jobs_[i].task);
    }
    return stage;
}

// The index of a stage at which all is done. Nothing: there is none, or the limit was reached.
std::optional<std::size_t> Ordering::search(bool hurry) {
    hurry_ = hurry;
    stages_.clear();
    seen_.clear();
    next_ = {};
    Stage start{bench::assembled(*graph_.bench), Closure(graph_), std::vector<bool>(jobs_.size())};
    do_all(start);
    keep(std::move(start), 0);
    while (!next_.empty()) {
        const auto [rank, whole, to_do, index] = next_.top();
        next_.pop();
        if (!hurry)
            at_least_ = whole;
        if (to_do == 0)
            return index;
        if (stages_.size() > most_stages_)
            return std::nullopt;
        follow(stage_of(index), index);
    }
    return std::nullopt;
}

WorkOrder Ordering::order_to(std::size_t index) const {
    WorkOrder work;
    work.changes = stages_[index].cost.first;
    work.turnings = stages_[index].cost.second;
    work.at_least = at_least_.first;
    work.turnings_at_least = at_least_.second;
    std::vector<std::size_t> path{index};
    while (path.back() != 0)
        path.push_back(stages_[path.back()].before);
    for (auto stage = path.rbegin(); stage != path.rend(); ++stage) {
        for (const Done& act : stages_[*stage].acts) {
            work.order.push_back(jobs_[act.job].task);
            work.tools.push_back(act.tool == none ? std::string()
                                                  : tools_[static_cast<std::size_t>(act.tool)]);
        }
    }
    return work;
}

// Past the limit: the tools alone first, then side by side between them.
WorkOrder Ordering::tools_then_sides() {
    const Cost least = at_least_;
    std::set<int> sides;
    std::map<TaskIndex, std::string> face;
    for (Job& job : jobs_) {
        if (job.face == none)
            continue;
        sides.insert(job.face);
        face[job.task] = faces_[static_cast<std::size_t>(job.face)];
        job.face = none;
    }
    auto found = sides.empty() ? std::nullopt : search(false);
    if (!found)
        found = search(true);
    if (!found)
        return {};
    WorkOrder work = order_to(*found);
    std::vector<std::string> faces;
    for (const TaskIndex task : work.order)
        faces.push_back(face.contains(task) ? face[task] : std::string());
    group_by_side(graph_, risks_, faces, work);
    // What was proved with the sides holds for orders with so many changes of tool.
    work.at_least = std::max(work.at_least, least.first);
    work.turnings_at_least = sides.size() - (sides.empty() ? 0 : 1);
    if (work.at_least == least.first)
        work.turnings_at_least = std::max(work.turnings_at_least, least.second);
    return work;
}

WorkOrder Ordering::run() {
    const auto found = search(false);
    if (found)
        return order_to(*found);
    return next_.empty() ? WorkOrder{} : tools_then_sides();
}

} // namespace

WorkOrder order_of_work(const TaskGraph& graph, const Risks& risks,
                        const std::vector<TaskIndex>& tasks, std::size_t most_stages) {
    return Ordering(graph, risks, tasks, most_stages).run();
}

} // namespace matchmark::plan
