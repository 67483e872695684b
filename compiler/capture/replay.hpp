// The noted jobs done again on the bench, by the device that was made of them.
#pragma once

#include "bench/bench.hpp"
#include "capture/description.hpp"

namespace matchmark::capture {

// One finding for each job that the device does not allow: a line of the notes against a line of
// the device. `device` is the device as it is after capture; items are found by name.
void find_contradictions(const model::Model& device, const Description& description,
                         std::vector<Diagnostic>& findings);

} // namespace matchmark::capture
