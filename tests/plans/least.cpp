// The least way in, found by the planner and by an answer-set program.
#include "plans/plans.hpp"
#include "plans/solver.hpp"
#include "support/random_model.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <fmt/core.h>

namespace matchmark::plans {

namespace {

constexpr std::size_t with_alternatives = 500; // devices that leave a choice
constexpr int most_devices = 1500;
constexpr std::size_t most_bounded = 15; // not proved; then the bound has to hold
constexpr std::size_t most_items = 60;

struct LeastTally {
    std::size_t asked = 0;
    std::size_t agreed = 0;
    std::size_t bounded = 0; // not proved; the judge's answer lies within the gap told
    std::size_t impossible = 0;
    std::size_t with_choice = 0; // the planner met alternatives
    std::size_t most_acts = 0;
    bool no_judge = false;
};

// The way as it is told has to be possible, act for act, and end where it says.
bool holds_on_the_bench(const bench::Bench& on, const plan::WayInGoal& goal,
                        const plan::WayIn& way) {
    bench::State state = bench::assembled(on);
    for (const auto& planned : way.acts) {
        if (bench::apply(on, state, planned.act))
            return false;
    }
    return std::all_of(goal.items.begin(), goal.items.end(), [&](model::ItemId item) {
        if (goal.expose)
            return bench::reachable(on, state, item);
        const model::Role role = on.model->item(item).role;
        if (role == model::Role::part)
            return !bench::present(on, state, item);
        return model::is_tie(role) ? !bench::binds(on, state, item)
                                   : !bench::covers(on, state, item);
    });
}

void compare_least(const bench::Bench& on, const plan::WayInGoal& goal, const std::string& name,
                   bool groups_as_one, LeastTally& tally) {
    const plan::WayIn way = plan::way_in(on, goal);
    const auto judged = solve("plan.lp", facts_of(on, goal, groups_as_one));
    ++tally.asked;
    if (!judged) {
        fmt::print("  {}: gringo and clasp gave no answer\n", name);
        tally.no_judge = true;
        return;
    }
    const bool found = way.proof == plan::Proof::least;
    const long long cost = std::llround(way.seconds * 1000);
    const bool proved = found || way.proof == plan::Proof::impossible;
    const bool same = proved && found == judged->possible && (!found || cost == judged->cost) &&
                      (!found || holds_on_the_bench(on, goal, way));
    const bool open = way.proof == plan::Proof::bounded || way.proof == plan::Proof::unknown;
    const bool within =
        open && (way.acts.empty() || (judged->possible && judged->cost <= cost &&
                                      judged->cost >= std::llround(way.at_least_seconds * 1000) &&
                                      holds_on_the_bench(on, goal, way)));
    tally.agreed += same ? 1 : 0;
    tally.bounded += within ? 1 : 0;
    tally.impossible += judged->possible ? 0 : 1;
    tally.with_choice += way.with_choice > 0 && judged->possible ? 1 : 0;
    tally.most_acts = std::max(tally.most_acts, way.acts.size());
    if (!same && !within) {
        fmt::print("  {}: planner: {} {} ms, bench {}; clasp: {} {} ms\n", name,
                   static_cast<int>(way.proof), cost,
                   holds_on_the_bench(on, goal, way) ? "content" : "not content",
                   judged->possible ? "found" : "no way", judged->cost);
    }
}

void print_head() {
    fmt::print("The least way in: planner and clasp\n{:<24}{:>8}{:>8}{:>9}{:>11}{:>13}{:>11}\n",
               "device", "asked", "agreed", "bounded", "no way in", "with choice", "most acts");
}

void print_row(const std::string& name, const LeastTally& tally) {
    fmt::print("{:<24}{:>8}{:>8}{:>9}{:>11}{:>13}{:>11}\n", name, tally.asked, tally.agreed,
               tally.bounded, tally.impossible, tally.with_choice, tally.most_acts);
    std::fflush(stdout);
}

} // namespace

bool least_ways() {
    print_head();
    LeastTally random;
    for (int seed = 0; seed < most_devices && random.with_choice < with_alternatives; ++seed) {
        Chance chance{std::mt19937(static_cast<std::uint32_t>(seed))};
        const model::Model model = random_device(chance, most_items);
        const plan::WayInGoal goal = random_goal(chance, model);
        compare_least({&model, 0}, goal, fmt::format("random device {}", seed), false, random);
    }
    print_row("at random", random);
    return random.agreed + random.bounded == random.asked && random.bounded <= most_bounded &&
           random.with_choice >= with_alternatives;
}

bool least_ways_of_samples() {
    print_head();
    bool well = true;
    for (const Sample& sample : samples()) {
        LeastTally tally;
        for (unsigned v = 0; v < model::variant_count(sample.done.model); ++v) {
            const bench::Bench on{&sample.done.model, v};
            for (std::uint32_t i = 0; i < sample.done.model.items.size(); ++i) {
                const model::ItemId item{i};
                if (!on.exists(item) || sample.done.model.item(item).role != model::Role::part)
                    continue;
                for (const bool expose : {false, true})
                    compare_least(on, {{item}, expose}, sample.done.model.item(item).name, true,
                                  tally);
            }
        }
        print_row(sample.done.model.device.name, tally);
        well = well && tally.agreed == tally.asked;
    }
    return well;
}

} // namespace matchmark::plans
