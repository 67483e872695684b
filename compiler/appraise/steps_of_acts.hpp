// What one act means for the count of steps.
#pragma once

#include "appraise/steps.hpp"

#include <optional>

namespace matchmark::appraise {

// Why a step ends with the act; nothing when it goes on.
std::optional<StepEnd> ends_step(const model::Model& model, const OrderedAct& act);
// Done before the work proper: counted in no step.
bool is_preparation(const model::Model& model, const OrderedAct& act);

} // namespace matchmark::appraise
