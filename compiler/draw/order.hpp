// The order of a guide's steps, and which tools are in hand at each.
#pragma once

#include "draw/scene.hpp"
#include "language/spoken.hpp"
#include "model/model.hpp"

#include <vector>

namespace matchmark::draw {

// A row for each step, a column for each tool. A long guide goes on in further scenes, each as high
// as a page's body. `on_page`: without its title, which the page gives it, and as wide as a page's
// body.
std::vector<Scene> order_of_steps(const model::Model& model, const model::Procedure& procedure,
                                  bool on_page, const language::Language& in = language::english());

} // namespace matchmark::draw
