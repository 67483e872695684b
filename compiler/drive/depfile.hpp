// Dependency files: what a result was made from, for Make and for Ninja.
#pragma once

#include "drive/compilation.hpp"

#include <set>
#include <string>
#include <vector>

namespace matchmark::drive {

// Every file that the compilation has read, the parts library in the program left out, and the
// pictures that its guides show.
std::set<std::string> files_read(const Compilation& done);

// "target: file file", in the syntax that Make and Ninja share; a line without dependencies for
// each file, so that Make does not stop when one is deleted. Nothing when a name holds a line end,
// which neither can write.
std::string depfile_text(const std::vector<std::string>& targets,
                         const std::set<std::string>& files);

} // namespace matchmark::drive
