// The torques to which a guide tightens, each beside the thread and the grade that must bear it.
#pragma once

#include "check/walk.hpp"

#include <string>

namespace matchmark::check {

struct StatedTorque {
    std::size_t event = 0;
    model::ItemId item;
    model::Quantity torque;
    const model::Thread* thread = nullptr;
    const model::Grade* grade = nullptr; // null: none is named, and none is usual
};

// In the order of the work; of fasteners whose thread is known, and of lines that say no other
// torque than the device.
std::vector<StatedTorque> stated_torques(const Walk& walk);

// In N.m; nothing when it is not known.
std::optional<double> breaks_at(const StatedTorque& stated);

// Thread, grade, and whether the grade is taken because none is named: "thread M6 in class-8.8",
// "thread M6 in class-8.8 (taken as that, since no grade is named)".
std::string what_bears(const Walk& walk, const StatedTorque& stated);

// In N.m, to two figures: published torques differ by a tenth.
model::Quantity torque_shown(double newton_metres);
// The same, rounded down: of a limit that was passed.
model::Quantity torque_not_above(double newton_metres);

// A finding at the line that tightens, with the place where the torque is declared.
Diagnostic torque_finding(const Walk& walk, const StatedTorque& stated, std::string message);

} // namespace matchmark::check
