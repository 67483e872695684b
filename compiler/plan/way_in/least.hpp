// The least set of acts that brings the goal about, with the sets that prove it.
#pragma once

#include "plan/way_in/closure.hpp"
#include "plan/way_in/cover.hpp"
#include "plan/way_in/search.hpp"

#include <chrono>

namespace matchmark::plan {

struct LeastLimits {
    std::optional<double> seconds; // none: as long as it takes
    // What is not lighter than this is not looked for: then the answer is `bounded`, without acts.
    std::optional<std::int64_t> lighter_than;
};

struct Least {
    Proof proof = Proof::unknown;
    std::vector<TaskIndex> order; // acts, in an order that the bench allows
    std::int64_t weight = 0;
    std::int64_t at_least = 0;
    std::vector<Cut> sets; // of each, an act has to be done
};

// Looks for the goal of the graph. `done`: acts that were done before, in order; they cost nothing.
class LeastWay {
public:
    LeastWay(const TaskGraph& graph, const Risks& risks, const WayInGoal& goal,
             std::vector<TaskIndex> done = {})
        : graph_(graph), risks_(risks), goal_(goal), done_(std::move(done)) {}

    // `known`: sets that are known to hold; they are not given again.
    Least find(const LeastLimits& limits, const TaskSets& known = {});

private:
    [[nodiscard]] bool out_of_time() const;
    [[nodiscard]] std::vector<bool> only(const std::vector<TaskIndex>& tasks) const;
    [[nodiscard]] std::vector<bool> all_but(const std::vector<TaskIndex>& tasks) const;
    [[nodiscard]] Closure after(const std::vector<TaskIndex>& tasks,
                                const std::vector<bool>& barred = {}) const;
    void keep(Cut cut);
    bool add_cuts(const std::vector<TaskIndex>& chosen);
    Cut asked_by_the_bench(const std::vector<TaskIndex>& chosen);
    Cut safe_or_shut(const std::vector<TaskIndex>& chosen, const Risks::Danger& danger,
                     const Risks::Cover& cover);
    bool fails(const std::vector<bool>& allowed);
    void grow(std::vector<bool>& grown, const std::vector<TaskIndex>& chunk);
    [[nodiscard]] Cut on_trial(std::vector<TaskIndex> tasks) const;
    [[nodiscard]] Search try_out(const std::vector<bool>& allowed, std::size_t most_branches) const;
    std::vector<TaskIndex> some_way();
    std::vector<TaskIndex> settle_on(std::vector<TaskIndex> chosen);

    const TaskGraph& graph_;
    const Risks& risks_;
    const WayInGoal& goal_;
    std::vector<TaskIndex> done_;
    LeastLimits limits_;
    TaskSets sets_; // those known, and the acts of those in found_.sets
    Least found_;
    std::size_t spent_ = 0; // branches of searches that failed
    std::chrono::steady_clock::time_point started_ = std::chrono::steady_clock::now();
};

} // namespace matchmark::plan
