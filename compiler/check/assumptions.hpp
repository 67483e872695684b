// What a device's file still assumes.
#pragma once

#include "diagnostics/diagnostic.hpp"
#include "model/model.hpp"

#include <vector>

namespace matchmark::check {

// One finding that lists every assumed line of the file, at the first of them; none when there is
// no such line.
void find_assumed(const model::Model& model, FileId file, std::vector<Diagnostic>& findings);

} // namespace matchmark::check
