// How many steps a way out has, as Commission Decision (EU) 2016/1371 counts them.
//
// "An operation that finishes with the removal of a part and/or with a change of tool": a step ends
// when a part comes off, and when another tool is taken than the one used in it. Taking a tool up,
// laying it down and undoing a fastener end none; fasteners are not parts (French orders of 29
// December 2020 on the repair index, which use the same idea). Parting or heating a bond is a step,
// and so is cutting off a supply of energy (from memory), and draining (our own reading). What
// makes a part safe from outside before the work is no step: it is preparation.
#pragma once

#include "bench/bench.hpp"

#include <string>
#include <vector>

namespace matchmark::appraise {

struct OrderedAct {
    bench::Act act;
    model::StateId from = 0;
    std::string tool; // empty: by hand
};

enum class StepEnd : unsigned char { part_off, bond, supply, drained, tool_changed, at_last };

struct Step {
    std::vector<std::size_t> acts; // indices into the acts
    StepEnd end = StepEnd::at_last;
};

std::vector<Step> count_steps(const model::Model& model, const std::vector<OrderedAct>& acts);

struct FewestSteps {
    std::vector<OrderedAct> order;
    std::vector<Step> steps;
    bool proved = false; // no order of these acts, that the bench allows, has fewer
};

// The same acts in the order with the fewest steps. What makes safe (a supply, a charge, a fluid)
// stays before all that it stood before. Beyond `most_stages` of the work looked at, the order
// given is kept when none better was found.
FewestSteps fewest_steps(const bench::Bench& bench, const std::vector<OrderedAct>& acts,
                         std::size_t most_stages = 2000);

} // namespace matchmark::appraise
