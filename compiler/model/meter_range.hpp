// How far a listed meter or gauge measures, as its description says.
#pragma once

#include "model/model.hpp"

#include <optional>

namespace matchmark::model {

// "meter 0 to 600 V": the most of what is measured that the description names, 600 V; nothing when
// it names none.
std::optional<Quantity> measures_up_to(const Resource& tool, Measure measure);

} // namespace matchmark::model
