// A parts table written as a device, with a marked place wherever a person has to decide.
#pragma once

#include "drive/importing/words.hpp"

#include <string>

namespace matchmark::drive {

// A line that begins so is a marked place.
inline constexpr const char* decide_mark = "# decide: ";

// `known`: the kinds and drives of the library. `from`: the table's file, for the head.
// The text reads without errors as far as its grammar goes.
std::string device_from(const PartsTable& table, const KindWords& known, const std::string& name,
                        const std::string& from);

// Is this a text without slips in its grammar?
bool reads_well(const std::string& text);

} // namespace matchmark::drive
