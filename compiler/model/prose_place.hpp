// Where the author's words stand among the actions of their step.
#pragma once

#include "model/guide_source.hpp"

#include <cstddef>

namespace matchmark::model {

// How many of the step's actions stand above a passage of it, in the order in which they are done.
// An action that the compiler wrote was written above none.
std::size_t actions_above(const Step& step, const Prose& passage);

} // namespace matchmark::model
