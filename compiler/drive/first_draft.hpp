// Starting texts for a device and for a guide, which check clean as they stand.
#pragma once

#include "drive/compilation.hpp"

#include <string>
#include <vector>

namespace matchmark::drive {

// A small device with a lid, screws, a plug and a board, to be changed line by line.
std::string device_draft(const std::string& name);

// Guides for the device of a compilation, the fullest first: each takes out one part by the
// shortest way and puts it back. The last has no steps yet. `use`: the device's file as seen from
// the guide.
std::vector<std::string> guide_drafts(const Compilation& device, const std::string& name,
                                      const std::string& use);

// "replace-cell" -> "Replace cell"
std::string title_of(const std::string& name);

} // namespace matchmark::drive
