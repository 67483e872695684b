// Puts tests where they can be done: their conditions hold, what they prove is back, and nothing
// hides it yet.
#pragma once

#include "bench/work.hpp"

#include <vector>

namespace matchmark::plan {

// Inserts the tests into the procedure's put-back, splitting a step in two where a test belongs in
// its midst. `renewed` are the parts that a test proves when it does not say what.
void place_trials(const model::Model& model, const std::vector<model::Resource>& resources,
                  model::VariantMask variants, std::vector<model::Step>& steps,
                  const std::vector<model::Step>& tests);

} // namespace matchmark::plan
