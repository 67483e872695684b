// The least way in once more, by a judge that works with times in place of stable models.
#include "plans/plans.hpp"
#include "plans/second_opinion.hpp"
#include "support/random_model.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/core.h>

namespace matchmark::plans {

namespace {

constexpr int devices = 510;
constexpr std::size_t most_second_items = 60;
constexpr unsigned most_seconds = 10;   // for one device
constexpr std::size_t sample_parts = 3; // of each sample: those declared last

struct SecondTally {
    std::size_t asked = 0;
    std::size_t agreed = 0;
    std::size_t no_answer = 0;  // z3 took too long, or the planner has no proof
    std::size_t most_of_it = 0; // items of the largest device on which they agreed
};

void compare_second(const bench::Bench& on, const plan::WayInGoal& goal, const std::string& name,
                    SecondTally& tally) {
    const plan::WayIn way = plan::way_in(on, goal);
    const auto judged = second_opinion(on, goal, most_seconds);
    ++tally.asked;
    const bool proved = way.proof == plan::Proof::least || way.proof == plan::Proof::impossible;
    if (!judged || !proved) {
        ++tally.no_answer;
        return;
    }
    const bool found = way.proof == plan::Proof::least;
    const long long cost = std::llround(way.seconds * 1000);
    const bool same = found == judged->possible && (!found || cost == judged->cost);
    tally.agreed += same ? 1 : 0;
    if (same)
        tally.most_of_it = std::max(tally.most_of_it, on.model->items.size());
    else
        fmt::print("  {}: planner {} {} ms; z3 {} {} ms\n", name, static_cast<int>(way.proof), cost,
                   judged->possible ? "found" : "no way", judged->cost);
}

bool holds(const std::string& name, const SecondTally& tally) {
    fmt::print("{:<24}{:>8}{:>8}{:>11}{:>14}\n", name, tally.asked, tally.agreed, tally.no_answer,
               tally.most_of_it);
    return tally.agreed + tally.no_answer == tally.asked && tally.agreed * 4 >= tally.asked * 3;
}

} // namespace

bool second_opinions() {
    fmt::print("\nThe least way in: planner and z3\n{:<24}{:>8}{:>8}{:>11}{:>14}\n", "device",
               "asked", "agreed", "no answer", "most items");
    SecondTally random;
    for (int seed = 0; seed < devices; ++seed) {
        Chance chance{std::mt19937(static_cast<std::uint32_t>(seed))};
        // Small ones among them, and some as large as clasp gets.
        const model::Model model = random_device(chance, seed % 5 == 0 ? most_second_items : 24);
        const plan::WayInGoal goal = random_goal(chance, model);
        compare_second({&model, 0}, goal, fmt::format("random device {}", seed), random);
    }
    bool well = holds("at random", random);
    SecondTally of_samples;
    for (const Sample& sample : samples()) {
        const model::Model& model = sample.done.model;
        std::size_t asked = 0;
        for (std::uint32_t i = static_cast<std::uint32_t>(model.items.size());
             i-- > 0 && asked < sample_parts;) {
            if (model.items[i].role != model::Role::part ||
                !bench::Bench{&model, 0}.exists(model::ItemId{i}))
                continue;
            ++asked;
            compare_second({&model, 0}, {{model::ItemId{i}}, false}, model.items[i].name,
                           of_samples);
        }
    }
    return holds("samples", of_samples) && well;
}

} // namespace matchmark::plans
