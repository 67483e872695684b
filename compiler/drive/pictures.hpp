// The pictures that guides show: whether they are there, and their bytes.
#pragma once

#include "drive/compilation.hpp"
#include "guide/document.hpp"

#include <vector>

namespace matchmark::drive {

// A warning `missing-picture` at each photo of the root's guides whose file is not there.
void report_missing_pictures(Disk& disk, Compilation& done);

// The bytes of every picture of the document that can be read.
guide::Assets read_pictures(Disk& disk, const guide::Document& document);

} // namespace matchmark::drive
