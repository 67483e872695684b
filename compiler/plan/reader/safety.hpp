// What a reader must know before the first step: signs, what to wear, what is stored in the
// equipment, and what the work voids.
#pragma once

#include "plan/reader/words.hpp"

namespace matchmark::plan {

// Fills signs, protection, energies and ratings. `hazards`: those that the steps meet, by index.
// The document's sections stand already.
void tell_safety(const ReaderWords& words, const model::Procedure& procedure,
                 model::VariantMask covered, const std::vector<std::uint32_t>& hazards,
                 guide::Document& document);

} // namespace matchmark::plan
