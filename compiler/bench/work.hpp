// From actions as a guide has them to acts on the bench.
#pragma once

#include "bench/bench.hpp"

namespace matchmark::bench {

using Resources = std::vector<model::Resource>;

// Is one of the action's spares or supplies meant for the item?
bool supplied(const Model& model, const Resources& resources, const model::Action& action,
              ItemId item);

// The act that a verb's action does on one of its targets.
Act act_of(const Model& model, const Resources& resources, const model::Action& action,
           const model::Target& target);

// What an action of the compiler's own does to the state: renewed, marked, disposed of, given up.
// Nothing for a verb. A new one stands in the outermost safe state of each set in which the safety
// of a hazard lies: relaxed, discharged, cool.
void note(const Bench& bench, State& state, const model::Action& action);

// The states that these have once new ones are taken.
void take_new_ones(const Bench& bench, State& state, const model::ItemRef& ref);

// The items that the steps renew, some perhaps twice: what a test proves that names nothing.
std::vector<ItemId> renewed_by(const std::vector<model::Step>& steps);

// Does to the state what the action says, asking nothing.
void carry_out(const Bench& bench, State& state, const Resources& resources,
               const model::Action& action);

// Gives the item in `to` the states and flags that it has in `from`.
void copy_item(const Model& model, ItemId item, const State& from, State& to);

// Does any (every) member of the item, among those named, have this flag?
bool any_flag(const Model& model, const State& state, ItemId item, std::uint8_t flag);
bool every_flag(const Model& model, const State& state, const model::ItemRef& ref,
                std::uint8_t flag);

} // namespace matchmark::bench
