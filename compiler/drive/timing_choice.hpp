// The timing that a command is told to use with --timing.
#pragma once

#include "model/model.hpp"

#include <optional>
#include <string>

namespace matchmark::drive {

// From now on the model's times are by that timing; no name leaves the usual one. Gives what is
// wrong when there is none of that name.
std::optional<std::string> choose_timing(model::Model& model, const std::string& name);

} // namespace matchmark::drive
