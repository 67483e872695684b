// What moves is driven by what feeds the function that it lies on.
#pragma once

#include "model/model.hpp"

namespace matchmark::model {

// To each source that feeds a part of a function adds the parts of that function whose kind
// `moves`, or which a part whose kind `guards` covers: a motor's supply drives the belt and the
// knife that the motor turns, and nobody is near them while it is on. Called once, when functions
// are read.
void settle_driven(Model& model);

} // namespace matchmark::model
