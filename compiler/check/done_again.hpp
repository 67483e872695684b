// What a guide does on purpose though the bench sees no sense in it: what is gone over, or shut
// from outside after a trial.
#pragma once

#include "check/walk.hpp"

namespace matchmark::check {

// Is it done once more, as a fitter does: a supply proved dead again after a break, a bolt gone
// over with the wrench? Nothing moves by it. Somebody did it before, or it is not done again.
bool goes_over(const Walk& walk, std::size_t event, const bench::WrongState& reason);

// Does the act shut over what lay open while a test was run there? Whoever shuts a door from
// outside lays nothing open.
bool shuts_after_trial(const Walk& walk, std::size_t event, const bench::State& after,
                       const bench::Exposure& met);

} // namespace matchmark::check
