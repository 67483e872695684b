// What `plan` and `draft` start from: a device without errors, the parts asked for, a variant.
#pragma once

#include "drive/commands.hpp"
#include "drive/compilation.hpp"
#include "plan/way_in/way_in.hpp"

#include <variant>

namespace matchmark::drive {

struct DeviceGoal {
    Compilation done;
    plan::WayInGoal goal;
    unsigned variant = 0;
};

// The variant is the one named, or else the first that has all the items. When something is wrong
// it is told on `terminal.err`, and the exit code is given.
std::variant<DeviceGoal, int> device_goal(const std::string& command, const std::string& path,
                                          const std::vector<std::string>& names, bool expose,
                                          const std::string& variant, Terminal& terminal);

// The device in a file, from which a command makes something new. When it has errors or is none,
// that is told on `terminal.err`, and the exit code is given.
std::variant<Compilation, int> sound_device(const std::string& command, const std::string& path,
                                            Terminal& terminal);

} // namespace matchmark::drive
