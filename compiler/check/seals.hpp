// Whether a seal can still be laid between what it ties.
#pragma once

#include "check/walk.hpp"

namespace matchmark::check {

// Does all that it lies between stand as it does in the whole device: in one body, a plug screwed
// in?
bool is_together(const Walk& walk, const bench::State& state, model::ItemId seal);

} // namespace matchmark::check
