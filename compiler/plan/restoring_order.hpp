// When a way back that is derived makes its supplies live again.
#pragma once

#include "model/model.hpp"

#include <vector>

namespace matchmark::plan {

// A source that was isolated half way in is restored when all else is back, or right before what
// asks for it; each in one go, and what only flows (water) before power. Works on derived actions
// alone.
void put_restoring_in_order(const model::Model& model, std::vector<model::Step>& steps);

} // namespace matchmark::plan
