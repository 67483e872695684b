// What a reader must have before the work: tools, spares, supplies, what they cost, and the
// fasteners to sort.
#pragma once

#include "plan/reader/words.hpp"

namespace matchmark::plan {

// Fills tools, spares, supplies, cost, fasteners and disposals. `covered`: the variants that the
// guide is for.
void tell_needs(const ReaderWords& words, const model::Procedure& procedure,
                model::VariantMask covered, guide::Document& document);

} // namespace matchmark::plan
