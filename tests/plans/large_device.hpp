// A device as large as machines are, made at random: assemblies within assemblies, screws, plugs,
// seals, a supply; here and there a choice of ways.
#pragma once

#include "support/random_model.hpp"

namespace matchmark::plans {

using namespace random_model;

// So many items, and so many lines `behind A or B`. The same for a seed.
model::Model large_device(Chance& chance, std::size_t items, std::size_t alternatives);
// The parts that lie deepest.
plan::WayInGoal deep_goal(const model::Model& model, std::size_t parts);

} // namespace matchmark::plans
