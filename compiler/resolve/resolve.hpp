// Trees to model: names found, quantities given their measure, kinds and items tied together.
#pragma once

#include "diagnostics/diagnostic.hpp"
#include "model/model.hpp"
#include "syntax/tree.hpp"

#include <vector>

namespace matchmark::resolve {

// `files`: the parts library first, then what is used, in dependency order, the file asked about
// last. What cannot be resolved is reported and left out, so that the model is always whole; an
// unknown name silences what follows from it.
model::Model resolve(const SourceMap& sources, const std::vector<syntax::File>& files,
                     std::vector<Diagnostic>& findings);

} // namespace matchmark::resolve
