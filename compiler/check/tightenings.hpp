// What a guide makes fast again, and to which torques.
#pragma once

#include "check/walk.hpp"

#include <vector>

namespace matchmark::check {

// Does the event bring the item back to how it holds in the whole device?
bool makes_fast(const Walk& walk, const Event& event);

// Does the line say another torque than the device? What is rounded is the same. `other-torque`
// tells it, and until it is settled nothing else is said of the line's torque.
bool in_dispute(const Walk& walk, const Event& event);

struct TorqueUse {
    model::Quantity torque;
    std::size_t first_event = 0;
};

// The torques that something is tightened to, each once, the least first.
std::vector<TorqueUse> torques_used(const Walk& walk);

} // namespace matchmark::check
