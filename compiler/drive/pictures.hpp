// The pictures that guides show: whether they are there, and their bytes.
#pragma once

#include "drive/compilation.hpp"
#include "guide/document.hpp"

#include <vector>

namespace matchmark::drive {

// At each photo of the root's guides: a warning when its file is not there, or is no picture that a
// page shows; advice when it is coarse at the size at which it is printed.
void report_pictures(Disk& disk, Compilation& done);

// The bytes of every picture of the document that can be read.
guide::Assets read_pictures(Disk& disk, const guide::Document& document, const std::string& root);

} // namespace matchmark::drive
