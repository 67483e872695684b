// What moves under a guard is driven by what feeds the function that it lies on.
#pragma once

#include "model/model.hpp"

namespace matchmark::model {

// To each source that feeds a part of a function adds the parts of that function which a part whose
// kind `guards` covers: a motor's supply drives the knife that the motor turns, and nobody is near
// it while it is on. Called once, when functions are read.
void settle_driven(Model& model);

} // namespace matchmark::model
