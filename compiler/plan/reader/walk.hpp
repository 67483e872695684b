// Follows a guide on the bench, in every variant that it is for, so that the reader is told what
// matters at each step.
#pragma once

#include "bench/work.hpp"
#include "plan/work_time.hpp"

namespace matchmark::plan {

struct ReaderWalk {
    WorkTimes times;
    // For each variant that the guide is for:
    std::vector<bench::Bench> benches = {};
    std::vector<bench::State> states = {};
    std::vector<WorkHand> hands = {};
    std::vector<double> seconds = {}; // usual time of what was done so far
    std::vector<double> waiting = {}; // time that passed by itself
    bool timed = false;               // some verb had a usual time
};

ReaderWalk start_walk(const model::Model& model, model::VariantMask variants);

void follow(ReaderWalk& walk, const bench::Resources& resources, const model::Action& action);

// Runs the device where the step is a test that does so.
void follow_test(ReaderWalk& walk, const model::Procedure& procedure, const model::Step& step);

// Do all conditions hold at once, in any of the variants?
bool any_holds(const ReaderWalk& walk, const std::vector<model::Condition>& conditions);

// Has the item a member that is in none of the safe states, in any of the variants?
bool any_unsafe(const ReaderWalk& walk, model::ItemId item, model::StateSet safe);

// Can the item be reached, in any of the variants?
bool any_reaches(const ReaderWalk& walk, model::ItemId item);

} // namespace matchmark::plan
