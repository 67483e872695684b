// Which guides a change touches: a file itself, what it names with `use`, the pictures that it
// shows.
#pragma once

#include "drive/inputs.hpp"

#include <string>
#include <vector>

namespace matchmark::drive {

// The names that a list holds: one a line, or parted by NUL; those in C's quotes, as git writes
// names with unusual letters, are unquoted. Empty lines are passed over.
std::vector<std::string> listed_names(const std::string& text);

// Of these files, those that are among the touched ones or depend on one, in their order. A file
// that cannot be read depends on nothing but itself.
std::vector<Input> touched_by(Disk& disk, const std::vector<Input>& files,
                              const std::vector<std::string>& touched);

} // namespace matchmark::drive
