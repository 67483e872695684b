// A 500-item device planned beside gringo and clasp, and what-if over a 200-item one.
#include "plans/large_device.hpp"
#include "plans/plans.hpp"
#include "plans/solver.hpp"

#include "plan/what_if.hpp"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <fmt/core.h>

namespace matchmark::plans {

namespace {

constexpr int runs = 5;

template <class Work> double milliseconds(const Work& work) {
    const auto begun = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begun)
        .count();
}

template <class Work> double shortest(const Work& work) {
    double best = milliseconds(work);
    for (int run = 1; run < runs; ++run)
        best = std::min(best, milliseconds(work));
    return best;
}

bool large_plan() {
    Chance chance{std::mt19937(1)};
    const model::Model model = large_device(chance, 500, 50);
    const plan::WayInGoal goal = deep_goal(model, 3);
    const bench::Bench on{&model, 0};
    plan::WayIn way;
    const double ours = shortest([&] { way = plan::way_in(on, goal); });
    const std::string facts = facts_of(on, goal, true);
    const std::string gringo =
        fmt::format("gringo -Wnone '{}/tests/plans/plan.lp' '{{}}'", MATCHMARK_SOURCE_DIR);
    std::string grounded;
    const double grounding = milliseconds([&] { grounded = output_of(gringo, facts); });
    const double solving = milliseconds(
        [&] { static_cast<void>(output_of("clasp -V0 --opt-mode=opt '{}'", grounded)); });
    const auto judged = solve("plan.lp", facts);
    const bool same = judged && judged->possible && way.proof == plan::Proof::least &&
                      judged->cost == std::llround(way.seconds * 1000);
    fmt::print("{} items, 50 alternatives, {} acts, the optimum {}: planner {:.1f} ms; gringo "
               "{:.0f} ms, clasp {:.0f} ms: {:.0f} and, clasp alone, {:.0f} times as long\n",
               model.items.size(), way.acts.size(), same ? "the same" : "NOT the same", ours,
               grounding, solving, (grounding + solving) / ours, solving / ours);
    return same;
}

void large_what_if() {
    Chance chance{std::mt19937(1)};
    const model::Model model = large_device(chance, 200, 20);
    const bench::Bench on{&model, 0};
    std::vector<model::ItemId> parts;
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if (model.items[i].role == model::Role::part)
            parts.emplace_back(model::ItemId{i});
    }
    std::vector<model::ItemId> ten; // spread over the device
    for (std::size_t i = 0; i < 10; ++i)
        ten.push_back(parts[(i + 1) * parts.size() / 10 - 1]);
    for (const auto& asked : {ten, parts}) {
        plan::WhatIf found;
        const double one = shortest([&] { found = plan::what_if(on, asked, false, 1); });
        const double all = shortest([&] { found = plan::what_if(on, asked, false); });
        fmt::print("what if, {} items, {} relations, {} parts: {:.0f} ms on one thread, {:.0f} ms "
                   "on all; {} of {} pairs planned again\n",
                   model.items.size(), found.relations, asked.size(), one, all, found.planned,
                   found.relations * asked.size());
    }
}

} // namespace

bool speed() {
    large_what_if();
    return large_plan();
}

} // namespace matchmark::plans
