// What the description of a listed thing says in numbers: how far a meter measures, a spare's
// rating.
#pragma once

#include "model/model.hpp"

#include <optional>
#include <string_view>
#include <vector>

namespace matchmark::model {

// The numbers with units in a description, in order: "fuse 32 A 250 V", 32 A and 250 V.
std::vector<Quantity> stated_in(std::string_view text);

// "meter 0 to 600 V": the most of what is measured that the description names, 600 V; nothing when
// it names none.
std::optional<Quantity> measures_up_to(const Resource& tool, Measure measure);

} // namespace matchmark::model
