// Several jobs in one opening: what each takes alone, and what it adds once those before it have
// the device open.
#pragma once

#include "plan/way_in/way_in.hpp"

namespace matchmark::plan {

// The least that has to be done for the goal when these acts were done before, in this order. The
// acts stand in an order that the bench allows, not in that of the fewest changes of tool, and
// without reasons.
WayIn way_on(const bench::Bench& bench, const std::vector<PlannedAct>& done, const WayInGoal& goal);

struct Job {
    model::ItemId item;
    WayIn alone;
    WayIn added; // after the jobs before it
};

// One item after the other, from the acts `done` on.
std::vector<Job> jobs_in_turn(const bench::Bench& bench, const std::vector<model::ItemId>& items,
                              bool expose, const std::vector<PlannedAct>& done = {});

} // namespace matchmark::plan
