// gringo and clasp as judges: facts in, the answer's atoms out.
#pragma once

#include "plan/way_in/way_in.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::plans {

struct Answer {
    bool possible = false;
    long long cost = 0; // of the optimum, as the program counts it
};

// What the command writes; `{}` in it stands for a file that holds the input. Empty when it cannot
// be run.
std::string output_of(const std::string& command, const std::string& input);

// The program's file in this folder, with these facts. Nothing when gringo or clasp is missing, or
// gives no final answer.
std::optional<Answer> solve(const std::string& program, const std::string& facts);

// What a verb takes for one member, in seconds, by the usual timing.
double takes(const model::Model& model, const model::Kind& kind, const model::Verb& verb);

// The device in the variant, and what is asked for, for plan.lp. `groups_as_one`: a group of which
// no line names members apart is one thing that takes as many times as long; else each member is a
// thing of its own, which clasp bears only in small devices.
std::string facts_of(const bench::Bench& bench, const plan::WayInGoal& goal, bool groups_as_one);

} // namespace matchmark::plans
