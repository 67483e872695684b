// Where the way back is not the way in reversed: seals are laid before their covers, and supplies
// restored last.
#pragma once

#include "model/model.hpp"

#include <vector>

namespace matchmark::plan {

// Moves derived actions of a put-back: what is laid first goes before the part that it seals, and a
// source of energy that was isolated half way in is restored when all else is back.
void put_in_working_order(const model::Model& model, std::vector<model::Step>& steps);

} // namespace matchmark::plan
