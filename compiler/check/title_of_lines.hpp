// What a step is called that a mend writes.
#pragma once

#include "model/model.hpp"

#include <string>
#include <vector>

namespace matchmark::check {

// "Plug in the mains", after the lines of the step as they stand in a guide; where none is a verb
// on an item, the words of the first.
std::string title_of_lines(const model::Model& model, const std::vector<std::string>& lines);

} // namespace matchmark::check
