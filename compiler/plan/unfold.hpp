// The guide with everything decided: the steps of other guides written in, the put-back derived,
// tests put in their places.
#pragma once

#include "model/model.hpp"

namespace matchmark::plan {

// Of the step that the lines `before` of a guide's head make.
inline constexpr const char* opening_title = "Get ready";

model::Procedure unfold(const model::Model& model, model::GuideId guide);

} // namespace matchmark::plan
