// An imported text brought to where it can be worked on: without errors, its open places marked.
#pragma once

#include "source/disk.hpp"

#include <string>
#include <vector>

namespace matchmark::drive {

// Each line that has an error, were the text at `path`, becomes a marked place that says what is
// wrong with it; a declaration goes with the lines below it. What `check` would say of the work
// itself stays for `check`.
std::string settled(Disk& disk, const std::string& path, std::string text);

struct OpenPlace {
    std::size_t line = 1;
    std::string question;
};
std::vector<OpenPlace> open_places(const std::string& text);

} // namespace matchmark::drive
