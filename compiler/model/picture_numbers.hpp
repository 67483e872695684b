// The number that stands for an item on all pictures of a guide: one thing, one number.
#pragma once

#include "model/guide_source.hpp"
#include "model/model.hpp"

#include <map>

namespace matchmark::model {

// From 1, in the order in which the guide's pictures first show the items, steps as they are done.
std::map<ItemId, unsigned> picture_numbers(const Model& model, const Procedure& procedure);

} // namespace matchmark::model
