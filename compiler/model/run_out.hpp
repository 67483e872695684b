// What runs out of a joint of pipes that is parted, and so is emptied before; what grips it.
#pragma once

#include "model/model.hpp"

namespace matchmark::model {

// The state of the fluid, or of the pressure, in which none of it is there any more; nothing when
// it always is, or is not there in an assembled device.
std::optional<StateId> emptied_state(const Kind& fluid);

// The parts that the joint joins, and those at the other ends of hoses; not behind a joint that
// lets nothing out.
std::vector<ItemId> parts_behind(const Model& model, const Item& joint);

// The fasteners that hold two of the parts that the tie touches, in whatever variant: they press a
// seal, or grip a hose.
std::vector<ItemId> fasteners_across(const Model& model, ItemId tie);
// And the pipe joints that do: they press the washers that lie between.
std::vector<ItemId> joints_across(const Model& model, ItemId tie);

// The fasteners by which the vessel that the item is in is emptied: those in it whose kind `lets
// out`. Not one that `lets nothing out`: the plug of a filler, above the level.
std::vector<ItemId> drain_plugs(const Model& model, const Item& item);

// Adds to each joint whose kind `lets out` a need: what `runs out` of the parts that it joins is
// emptied before it is parted, and before a fastener that grips it lets go. The fasteners that
// press a seal need what the seal itself needs of a fluid, and both what presses in the parts on
// it, with the fluid under that pressure. Not where the joint `lets nothing out`,
// or itself needs a fluid to be emptied. A fluid needs a supply that `runs out` and feeds its
// vessel shut before it is emptied, and not to be filled. A part that is `in` a vessel under
// pressure needs the pressure let off before it comes out, and so does a fastener there whose kind
// `lets out`. Called once, when all is read.
void settle_run_out(Model& model);

} // namespace matchmark::model
