// The parts library as a command sees it that asks about no guide.
#pragma once

#include "drive/commands.hpp"
#include "drive/compilation.hpp"

#include <optional>
#include <string>

namespace matchmark::drive {

// With what the file `in` declares beside, unless it is empty. Nothing when that cannot be read;
// the reason is on `terminal.err` then.
std::optional<Compilation> compile_library(const std::string& command, const std::string& in,
                                           Terminal& terminal);

} // namespace matchmark::drive
