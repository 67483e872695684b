// What a test proves, and whether it can prove it now.
#pragma once

#include "bench/work.hpp"

namespace matchmark::bench {

// Does the test prove this item: by name, through a function on whose path it lies, or (a test that
// names nothing) as one of the guide's renewed parts?
bool proves_item(const Model& model, const model::Step& test, ItemId item);

// The items on the function's path, with the fasteners that hold two of its parts together, what
// carries one of its parts and not all, the fluids that its parts run on, and the plugs of these;
// for a rating the fasteners that press its seals together: those that hold the same parts to each
// other as a seal joins.
std::vector<ItemId> upholding(const Bench& bench, model::FunctionId function);

// The items that must be back for the test to prove what it says: those named, and those on the
// paths of the functions named.
std::vector<ItemId> proven_items(const Bench& bench, const model::Step& test);

// The plugs of a part: it does nothing before they are in.
std::vector<ItemId> plugs_of(const Bench& bench, ItemId part);

// Those of them that a test of the part asks for: none to measure a part on dead circuits.
std::vector<ItemId> plugs_asked(const Bench& bench, const model::Step& test, ItemId part);

bool conditions_hold(const Bench& bench, const State& state, const model::Step& test);
// Stands as assembled, or was given up on purpose: a part that is present, a tie that binds as it
// did.
bool is_back(const Bench& bench, const State& state, ItemId item);
// All of these are.
bool all_back(const Bench& bench, const State& state, const std::vector<ItemId>& items);
// Those of the items that are hidden when the device is whole, as it is in `whole`.
std::vector<ItemId> hidden_in_whole(const Bench& bench, const State& whole,
                                    const std::vector<ItemId>& items);

} // namespace matchmark::bench
