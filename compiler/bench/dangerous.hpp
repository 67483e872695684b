// The items that have a hazard at all, found once for many acts.
#pragma once

#include "bench/exposure.hpp"

#include <vector>

namespace matchmark::bench {

// In order of declaration.
std::vector<ItemId> dangerous_items(const Bench& bench);

// As `exposure`, with these at hand.
std::optional<Exposure> exposure(const Bench& bench, const State& before, const State& after,
                                 const Act& act, const std::vector<ItemId>& dangerous);

} // namespace matchmark::bench
