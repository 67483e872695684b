// What has to come off first by what the device says of its parts, though no `needs` line names it.
#pragma once

#include "model/model.hpp"

namespace matchmark::model {

// Adds needs. A fastener that another one holds, a pin by its clip, is let go of once that is off.
// Of a source that nobody can cut from outside, a cell, a plug that isolates it is parted before
// the bonds on it, as far as it can be got at without them; and before the fasteners of what it
// drives and of the guards of that, if nothing has to come off to get at it. A plug that a source,
// which can be cut from outside, has on itself is made safe when live: it goes first. Called once,
// when it is known what drives what.
void settle_what_comes_first(Model& model);

// The connectors that are parted before the item, whose kind is parted last, and joined after it:
// the others on the part that it joins to what stays, the first one named.
std::vector<ItemId> parted_before(const Model& model, ItemId item);

} // namespace matchmark::model
