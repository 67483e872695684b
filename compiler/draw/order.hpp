// The order of a guide's steps, and which tools are in hand at each.
#pragma once

#include "draw/scene.hpp"
#include "model/model.hpp"

#include <vector>

namespace matchmark::draw {

// A row for each step, a column for each tool. A long guide goes on in further scenes, each as high
// as a page's body.
std::vector<Scene> order_of_steps(const model::Model& model, const model::Procedure& procedure);

} // namespace matchmark::draw
