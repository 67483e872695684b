// What a pressure holds up, and what presses it up again.
#pragma once

#include "model/model.hpp"

namespace matchmark::model {

// Adds needs. A pressure is let off when what rests on it, a raised ram, is set down; and while the
// supply from outside that drives its pump is off. Called once, when it is known what drives what.
void settle_pressed_up(Model& model);

} // namespace matchmark::model
