// What moves is driven by what feeds the function that it lies on.
#pragma once

#include "model/model.hpp"

namespace matchmark::model {

// To what each source that feeds a part of a function `feeds` and `drives`, adds the parts of that
// function whose kind `moves`, or which a part whose kind `guards` covers, or in which an energy
// whose kind `moves` is at work, unless heat makes it and it cools: a motor's supply drives the
// belt and the knife that the motor turns and the cylinder that its pump presses, and nobody is
// near them while it is on and the one connector by which they hang on the path, if it is one, is
// made. Called once, when functions are read.
void settle_driven(Model& model);

// Does the part move under the power of a function on whose path it lies: by its kind, behind a
// guard, or by an energy whose kind `moves`? Not by steam that heat makes: a boiler stands still.
bool is_driven(const Model& model, const Item& part);

// Of the parts that the fastener or bond ties, those that are driven, and what those of them that
// are guards cover; not of the one named last, to which the others are tied.
std::vector<ItemId> driven_held_by(const Model& model, const Item& tie);

// The guard that the part lies behind; unknown if there is none.
ItemId guard_of(const Model& model, const Item& part);

} // namespace matchmark::model
