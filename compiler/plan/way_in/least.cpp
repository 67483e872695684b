// Asks for acts one of which has to be done, chooses the cheapest that meet all that was asked for,
// and lets the bench say whether they are enough.
#include "plan/way_in/least.hpp"

#include <algorithm>
#include <numeric>

namespace matchmark::plan {

namespace {

constexpr std::int64_t never_done = std::numeric_limits<std::int64_t>::max();
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

} // namespace

bool LeastWay::out_of_time() const {
    const std::chrono::duration<double> passed = std::chrono::steady_clock::now() - started_;
    return limits_.seconds && passed.count() > *limits_.seconds;
}

// These acts, and those done before.
std::vector<bool> LeastWay::only(const std::vector<TaskIndex>& tasks) const {
    std::vector<bool> allowed(graph_.tasks.size());
    for (const TaskIndex task : tasks)
        allowed[task] = true;
    for (const TaskIndex task : done_)
        allowed[task] = true;
    return allowed;
}

std::vector<bool> LeastWay::all_but(const std::vector<TaskIndex>& tasks) const {
    std::vector<bool> allowed(graph_.tasks.size(), true);
    for (const TaskIndex task : tasks)
        allowed[task] = false;
    return allowed;
}

// What follows from these acts, but for the barred ones.
Closure LeastWay::after(const std::vector<TaskIndex>& tasks,
                        const std::vector<bool>& barred) const {
    Closure closure(graph_);
    for (const TaskIndex task : done_)
        closure.allow(task);
    for (const TaskIndex task : tasks) {
        if (barred.empty() || !barred[task])
            closure.allow(task);
    }
    return closure;
}

void LeastWay::keep(Cut cut) {
    sets_.add(cut.tasks);
    found_.sets.push_back(std::move(cut));
}

// What is found by trial on the bench rests on the whole device.
Cut LeastWay::on_trial(std::vector<TaskIndex> tasks) const {
    Cut cut{std::move(tasks), std::vector<RelationIndex>(graph_.conditions_of.size())};
    std::iota(cut.rests_on.begin(), cut.rests_on.end(), RelationIndex{0});
    return cut;
}

Search LeastWay::try_out(const std::vector<bool>& allowed, std::size_t most_branches) const {
    return search(graph_, risks_, goal_, allowed, most_branches, done_);
}

// What is still asked for when just these are done, by the graph; false when nothing is.
bool LeastWay::add_cuts(const std::vector<TaskIndex>& chosen) {
    Closure closure = after(chosen);
    bool any = false;
    while (!closure.goal_reached()) {
        Cut cut = closure.cut();
        for (const TaskIndex task : cut.tasks)
            closure.allow(task);
        any = true;
        const bool none = cut.tasks.empty();
        keep(std::move(cut));
        if (none)
            break;
    }
    return any;
}

// Is it certain that the bench does not reach the goal with just these?
bool LeastWay::fails(const std::vector<bool>& allowed) {
    const Search tried = try_out(allowed, branches_of_a_proof);
    spent_ += tried.branches;
    return tried.answer == Answer::no;
}

// Takes into `grown` as much as leaves the goal out of reach on the bench.
void LeastWay::grow(std::vector<bool>& grown, const std::vector<TaskIndex>& chunk) {
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
// act of one of these has to be done. Without acts: it does not follow.
Cut LeastWay::safe_or_shut(const std::vector<TaskIndex>& chosen, const Risks::Danger& danger,
                           const Risks::Cover& cover) {
    Cut asked{danger.makers, {}};
    asked.tasks.insert(asked.tasks.end(), cover.taken_unseen.begin(), cover.taken_unseen.end());
    const auto choices = left_shut(cover);
    const std::vector<bool> before = only({});
    const auto was_done = [&](TaskIndex task) { return before[task]; };
    if (choices.empty() || std::any_of(asked.tasks.begin(), asked.tasks.end(), was_done))
        return {};
    for (const auto& movers : choices) {
        if (std::any_of(movers.begin(), movers.end(), was_done))
            continue; // open already
        std::vector<bool> barred(graph_.tasks.size());
        for (const TaskIndex task : movers)
            barred[task] = true;
        for (const TaskIndex task : danger.makers)
            barred[task] = true;
        const Closure closure = after(chosen, barred);
        if (closure.goal_reached())
            return {};
        const Cut cut = closure.cut(barred);
        asked.tasks.insert(asked.tasks.end(), cut.tasks.begin(), cut.tasks.end());
        asked.rests_on.insert(asked.rests_on.end(), cut.rests_on.begin(), cut.rests_on.end());
    }
    const auto in_order = [](auto& list) {
        std::sort(list.begin(), list.end());
        list.erase(std::unique(list.begin(), list.end()), list.end());
    };
    in_order(asked.tasks);
    in_order(asked.rests_on);
    return asked;
}

// The graph is content with these acts and the bench is not: what else one of has to be done.
Cut LeastWay::asked_by_the_bench(const std::vector<TaskIndex>& chosen) {
    const std::vector<bool> taken = only(chosen);
    const auto is_taken = [&](TaskIndex task) { return taken[task]; };
    for (const Risks::Danger& danger : risks_.dangers) {
        if (std::any_of(danger.makers.begin(), danger.makers.end(), is_taken))
            continue;
        for (const Risks::Cover& cover : danger.covers) {
            if (!cover.must_stay_shut)
                continue;
            Cut asked = safe_or_shut(chosen, danger, cover);
            if (!asked.tasks.empty() &&
                std::none_of(asked.tasks.begin(), asked.tasks.end(), is_taken))
                return asked;
        }
        if (!danger.makers.empty() && fails(all_but(danger.makers)))
            return on_trial(danger.makers);
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
    return on_trial(std::move(asked));
}

// When time runs out: any way in, with what it does not need left out.
std::vector<TaskIndex> LeastWay::some_way() {
    Search found = try_out(all_but({}), branches_of_some_way);
    if (found.answer == Answer::no)
        found_.proof = Proof::impossible;
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
        found = try_out(kept, branches_of_a_proof);
        if (found.answer == Answer::yes) {
            kept = only(found.order);
        } else {
            kept[task] = true;
        }
    }
    return try_out(kept, branches_of_the_answer).order;
}

// Chooses until the bench is content. Empty: there is no way, or none was found in time.
std::vector<TaskIndex> LeastWay::settle_on(std::vector<TaskIndex> chosen) {
    const auto stop = [this] { return out_of_time(); };
    for (bool exact = false;;) {
        if (out_of_time()) {
            found_.proof = Proof::bounded;
            return some_way();
        }
        if (add_cuts(chosen)) {
            if (found_.sets.back().tasks.empty()) {
                found_.proof = Proof::impossible;
                return {};
            }
            exact = false;
            chosen = quick_cover(graph_.tasks, sets_).tasks;
            continue;
        }
        if (!exact) {
            const Cover cover =
                least_cover(graph_.tasks, sets_, stop, limits_.lighter_than.value_or(never_done));
            found_.at_least = std::max(found_.at_least, cover.at_least);
            if (limits_.lighter_than && found_.at_least >= *limits_.lighter_than) {
                found_.proof = Proof::bounded;
                return {};
            }
            chosen = cover.tasks;
            exact = cover.at_least == cover.weight;
            continue;
        }
        Search found = try_out(only(chosen), branches_of_the_answer);
        if (found.answer == Answer::yes) {
            found_.proof = Proof::least;
            return found.order;
        }
        if (found.answer == Answer::unknown || spent_ > branches_of_all_proofs) {
            found_.proof = Proof::bounded;
            return some_way();
        }
        keep(asked_by_the_bench(chosen));
        if (found_.sets.back().tasks.empty()) {
            found_.proof = Proof::impossible;
            return {};
        }
        exact = false;
        chosen = quick_cover(graph_.tasks, sets_).tasks;
    }
}

Least LeastWay::find(const LeastLimits& limits, const TaskSets& known) {
    limits_ = limits;
    sets_ = known;
    found_.order = settle_on(quick_cover(graph_.tasks, sets_).tasks);
    for (const TaskIndex task : found_.order)
        found_.weight += graph_.tasks[task].weight;
    if (found_.proof == Proof::bounded && found_.order.empty() && !limits_.lighter_than)
        found_.proof = Proof::unknown;
    return std::move(found_);
}

} // namespace matchmark::plan
