// Devices made at random, with alternatives, needs, live sources and dangers; the same for a seed.
#pragma once

#include "plan/way_in/way_in.hpp"
#include "support/chance.hpp"

namespace matchmark::random_model {

using support::Chance;

model::Verb verb(const char* name, model::StateSet from, model::StateId to, double seconds = 0);
model::Kind kind(model::Role role, std::vector<std::string> states, std::vector<model::Verb> verbs);
// Adds an item of the kind, and gives its number.
model::ItemId add_item(model::Model& model, std::size_t kind, std::uint16_t count = 1);

model::Model random_device(Chance& chance, std::size_t most_items);
plan::WayInGoal random_goal(Chance& chance, const model::Model& model);

} // namespace matchmark::random_model
