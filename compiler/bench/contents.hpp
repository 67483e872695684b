// What stands in a part: the fluids that go where it goes.
#pragma once

#include "bench/bench.hpp"

namespace matchmark::bench {

// The fluids in the part and in what it carries, in order of declaration.
std::vector<ItemId> fluids_in(const Bench& bench, ItemId part);

// Is any of it there?
bool is_filled(const Bench& bench, const State& state, ItemId fluid);

} // namespace matchmark::bench
