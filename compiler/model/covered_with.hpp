// What lies under a cover because what it is in, or between, does.
#pragma once

#include "model/model.hpp"

namespace matchmark::model {

// Gives a part or an energy that has a hazard, and a fluid that stays where it is laid, if no line
// says how it is reached, the lines of the nearest of its carriers that has some: the charge in a
// board is laid open with the board, the grease in a hinge with the hinge.
// To what is laid between parts, and that no line says how it is reached, gives the lines of the
// parts that it ties (not of the one that it ties them `to`): the seal round a rod behind a gland
// is reached when the gland is off. Called once, when all lines are read.
void settle_covered_with(Model& model);

} // namespace matchmark::model
