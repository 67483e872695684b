// A second judge: the device as a formula with a time for each act, for z3.
#pragma once

#include "plans/solver.hpp"

namespace matchmark::plans {

// The device and the goal in SMT-LIB, with the usual times as weights; docs/semantics.md as it
// stands: what is so when an act is done follows from the times of the acts.
std::string formula_of(const bench::Bench& bench, const plan::WayInGoal& goal);

// By z3. Nothing when it is missing, or gives no answer in so many seconds.
std::optional<Answer> second_opinion(const bench::Bench& bench, const plan::WayInGoal& goal,
                                     unsigned seconds);

} // namespace matchmark::plans
