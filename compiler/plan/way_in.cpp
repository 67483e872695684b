// Finds the way in: asks for acts one of which has to be done, chooses the cheapest that meet all
// that was asked for, and lets the bench say whether they are enough.
#include "plan/way_in.hpp"

#include "plan/order_of_work.hpp"
#include "plan/way_in_closure.hpp"
#include "plan/way_in_cover.hpp"
#include "plan/way_in_reasons.hpp"

#include <algorithm>
#include <chrono>

namespace matchmark::plan {

namespace {

constexpr std::size_t branches_of_the_answer = 200000;
constexpr std::size_t branches_of_some_way = 20000;
constexpr std::size_t branches_of_a_proof = 200;
constexpr std::size_t branches_of_all_proofs = 12000; // then the gap is told
constexpr std::size_t most_choices = 256;             // of what is left shut before a danger

// The choices of what is left shut, so that a thing stays hidden: of some line, something in each
// way. Each is the acts that must then not be done. Nothing when there are too many.
std::vector<std::vector<TaskIndex>> left_shut(const Risks::Cover& cover) {
    std::vector<std::vector<TaskIndex>> choices;
    for (const auto& ways : cover.bars) {
        std::vector<std::vector<TaskIndex>> of_line{{}};
        for (const auto& bars : ways) {
            std::vector<std::vector<TaskIndex>> longer;
            for (const auto& begun : of_line) {
                for (const auto& movers : bars) {
                    longer.push_back(begun);
                    longer.back().insert(longer.back().end(), movers.begin(), movers.end());
                }
            }
            of_line = std::move(longer);
            if (of_line.size() > most_choices)
                return {};
        }
        choices.insert(choices.end(), of_line.begin(), of_line.end());
    }
    return choices;
}

class Finder {
public:
    Finder(const bench::Bench& on, const WayInGoal& goal, const WayInLimits& limits)
        : goal_(goal), limits_(limits), graph_(task_graph(on, goal)), risks_(risks_of(graph_)) {}

    WayIn run();

private:
    [[nodiscard]] bool out_of_time() const;
    [[nodiscard]] std::vector<bool> only(const std::vector<TaskIndex>& tasks) const;
    [[nodiscard]] std::vector<bool> all_but(const std::vector<TaskIndex>& tasks) const;
    bool add_cuts(const std::vector<TaskIndex>& chosen);
    std::vector<TaskIndex> asked_by_the_bench(const std::vector<TaskIndex>& chosen);
    std::vector<TaskIndex> safe_or_shut(const std::vector<TaskIndex>& chosen,
                                        const Risks::Danger& danger, const Risks::Cover& cover);
    bool fails(const std::vector<bool>& allowed);
    void grow(std::vector<bool>& grown, const std::vector<TaskIndex>& chunk);
    std::vector<TaskIndex> some_way();
    std::vector<TaskIndex> settle_on(const std::vector<TaskIndex>& chosen);
    void tell(const std::vector<TaskIndex>& acts);
    void reorder(WorkOrder& work, const std::vector<TaskIndex>& wanted) const;

    const WayInGoal& goal_;
    const WayInLimits& limits_;
    TaskGraph graph_;
    Risks risks_;
    TaskSets sets_;
    WayIn result_;
    std::int64_t at_least_ = 0;
    std::size_t spent_ = 0; // branches of searches that failed
    std::chrono::steady_clock::time_point started_ = std::chrono::steady_clock::now();
};

bool Finder::out_of_time() const {
    const std::chrono::duration<double> passed = std::chrono::steady_clock::now() - started_;
    return limits_.seconds && passed.count() > *limits_.seconds;
}

std::vector<bool> Finder::only(const std::vector<TaskIndex>& tasks) const {
    std::vector<bool> allowed(graph_.tasks.size());
    for (const TaskIndex task : tasks)
        allowed[task] = true;
    return allowed;
}

std::vector<bool> Finder::all_but(const std::vector<TaskIndex>& tasks) const {
    std::vector<bool> allowed = only(tasks);
    allowed.flip();
    return allowed;
}

// What is still asked for when just these are done, by the graph; false when nothing is.
bool Finder::add_cuts(const std::vector<TaskIndex>& chosen) {
    Closure closure(graph_);
    for (const TaskIndex task : chosen)
        closure.allow(task);
    bool any = false;
    while (!closure.goal_reached()) {
        auto cut = closure.cut();
        for (const TaskIndex task : cut)
            closure.allow(task);
        any = true;
        const bool none = cut.empty();
        sets_.push_back(std::move(cut));
        if (none)
            break;
    }
    return any;
}

// Is it certain that the bench does not reach the goal with just these?
bool Finder::fails(const std::vector<bool>& allowed) {
    const Search tried = search(graph_, risks_, goal_, allowed, branches_of_a_proof);
    spent_ += tried.branches;
    return tried.answer == Answer::no;
}

// Takes into `grown` as much as leaves the goal out of reach on the bench.
void Finder::grow(std::vector<bool>& grown, const std::vector<TaskIndex>& chunk) {
    std::vector<bool> larger = grown;
    for (const TaskIndex task : chunk)
        larger[task] = true;
    if (fails(larger)) {
        grown = std::move(larger);
        return;
    }
    if (chunk.size() <= 1 || out_of_time() || spent_ > branches_of_all_proofs)
        return;
    const auto middle = chunk.begin() + static_cast<std::ptrdiff_t>(chunk.size() / 2);
    grow(grown, {chunk.begin(), middle});
    grow(grown, {middle, chunk.end()});
}

// A danger is made safe, or what hides it stays shut, and then the goal is reached another way: an
// act of one of these has to be done. Empty: it does not follow.
std::vector<TaskIndex> Finder::safe_or_shut(const std::vector<TaskIndex>& chosen,
                                            const Risks::Danger& danger,
                                            const Risks::Cover& cover) {
    std::vector<TaskIndex> asked = danger.makers;
    asked.insert(asked.end(), cover.taken_unseen.begin(), cover.taken_unseen.end());
    const auto choices = left_shut(cover);
    if (choices.empty())
        return {};
    for (const auto& movers : choices) {
        std::vector<bool> barred = only(movers);
        for (const TaskIndex task : danger.makers)
            barred[task] = true;
        Closure closure(graph_);
        for (const TaskIndex task : chosen) {
            if (!barred[task])
                closure.allow(task);
        }
        if (closure.goal_reached())
            return {};
        const auto cut = closure.cut(barred);
        asked.insert(asked.end(), cut.begin(), cut.end());
    }
    std::sort(asked.begin(), asked.end());
    asked.erase(std::unique(asked.begin(), asked.end()), asked.end());
    return asked;
}

// The graph is content with these acts and the bench is not: what else one of has to be done.
std::vector<TaskIndex> Finder::asked_by_the_bench(const std::vector<TaskIndex>& chosen) {
    const std::vector<bool> taken = only(chosen);
    for (const Risks::Danger& danger : risks_.dangers) {
        const bool apart = std::none_of(danger.makers.begin(), danger.makers.end(),
                                        [&](TaskIndex task) { return taken[task]; });
        if (!apart)
            continue;
        for (const Risks::Cover& cover : danger.covers) {
            if (!cover.must_stay_shut)
                continue;
            auto asked = safe_or_shut(chosen, danger, cover);
            const bool met = std::any_of(asked.begin(), asked.end(),
                                         [&](TaskIndex task) { return taken[task]; });
            if (!asked.empty() && !met)
                return asked;
        }
        if (!danger.makers.empty() && fails(all_but(danger.makers)))
            return danger.makers;
    }
    std::vector<TaskIndex> rest;
    for (TaskIndex task = 0; task < taken.size(); ++task) {
        if (!taken[task])
            rest.push_back(task);
    }
    std::vector<bool> grown = taken;
    grow(grown, rest);
    std::vector<TaskIndex> asked;
    for (TaskIndex task = 0; task < grown.size(); ++task) {
        if (!grown[task])
            asked.push_back(task);
    }
    return asked;
}

// When time runs out: any way in, with what it does not need left out.
std::vector<TaskIndex> Finder::some_way() {
    Search found = search(graph_, risks_, goal_, all_but({}), branches_of_some_way);
    if (found.answer == Answer::no)
        result_.proof = Proof::impossible;
    if (found.answer != Answer::yes)
        return {};
    std::vector<TaskIndex> order = found.order;
    std::sort(order.begin(), order.end(), [&](TaskIndex a, TaskIndex b) {
        return graph_.tasks[a].weight > graph_.tasks[b].weight;
    });
    std::vector<bool> kept = only(order);
    for (const TaskIndex task : order) {
        if (!kept[task])
            continue;
        kept[task] = false;
        found = search(graph_, risks_, goal_, kept, branches_of_a_proof);
        if (found.answer == Answer::yes) {
            kept = only(found.order);
        } else {
            kept[task] = true;
        }
    }
    return search(graph_, risks_, goal_, kept, branches_of_the_answer).order;
}

// Chooses until the bench is content. Empty: there is no way, or none was found in time.
std::vector<TaskIndex> Finder::settle_on(const std::vector<TaskIndex>& first) {
    const auto stop = [this] { return out_of_time(); };
    std::vector<TaskIndex> chosen = first;
    for (bool exact = false;;) {
        if (out_of_time()) {
            result_.proof = Proof::bounded;
            return some_way();
        }
        if (add_cuts(chosen)) {
            if (sets_.back().empty()) {
                result_.proof = Proof::impossible;
                return {};
            }
            exact = false;
            chosen = quick_cover(graph_.tasks, sets_).tasks;
            continue;
        }
        if (!exact) {
            const Cover cover = least_cover(graph_.tasks, sets_, stop);
            at_least_ = std::max(at_least_, cover.at_least);
            chosen = cover.tasks;
            exact = cover.at_least == cover.weight;
            continue;
        }
        Search found = search(graph_, risks_, goal_, only(chosen), branches_of_the_answer);
        if (found.answer == Answer::yes) {
            result_.proof = Proof::least;
            return found.order;
        }
        if (found.answer == Answer::unknown || spent_ > branches_of_all_proofs) {
            result_.proof = Proof::bounded;
            return some_way();
        }
        auto asked = asked_by_the_bench(chosen);
        if (asked.empty()) {
            result_.proof = Proof::impossible;
            return {};
        }
        sets_.push_back(std::move(asked));
        exact = false;
        chosen = quick_cover(graph_.tasks, sets_).tasks;
    }
}

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
    const model::Model& model = *graph_.bench->model;
    const auto reasoned = by_reason(graph_, acts);
    WorkOrder work = order_of_work(graph_, risks_, reasoned);
    if (limits_.by_reason)
        reorder(work, reasoned);
    result_.tool_changes = work.changes;
    result_.tool_changes_at_least = work.at_least;
    result_.reasons = reasons_of(graph_, risks_, work.order);
    for (std::size_t i = 0; i < work.order.size(); ++i) {
        const Task& task = graph_.tasks[work.order[i]];
        const Unit& unit = graph_.units[task.unit];
        const model::Verb& verb = model.kind_of(unit.item).verbs[task.verb];
        const auto count = static_cast<double>(unit.members.size());
        PlannedAct act{task.act, task.from, (verb.takes ? verb.takes->base : 0) * count,
                       verb.waits ? verb.waits->base : 0, work.tools[i]};
        result_.seconds += act.seconds;
        result_.waiting += act.waiting;
        result_.acts.push_back(std::move(act));
    }
    if (limits_.count_orders)
        result_.orders = count_orders(graph_, work.order);
    const std::int64_t milliseconds = at_least_ / (weight_of_second / 1000);
    result_.at_least_seconds =
        result_.proof == Proof::least ? result_.seconds : static_cast<double>(milliseconds) / 1000;
}

WayIn Finder::run() {
    const std::vector<TaskIndex> acts = settle_on({});
    if (result_.proof == Proof::impossible) {
        result_.obstacles = obstacles_of(graph_);
        return std::move(result_);
    }
    if (result_.proof == Proof::bounded && acts.empty()) {
        result_.proof = Proof::unknown;
        return std::move(result_);
    }
    result_.proofs = sets_.size();
    result_.with_choice = static_cast<std::size_t>(
        std::count_if(sets_.begin(), sets_.end(), [](const auto& set) { return set.size() > 1; }));
    tell(acts);
    return std::move(result_);
}

} // namespace

WayIn way_in(const bench::Bench& bench, const WayInGoal& goal, const WayInLimits& limits) {
    return Finder(bench, goal, limits).run();
}

} // namespace matchmark::plan
