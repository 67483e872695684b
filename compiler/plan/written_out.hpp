// `expand`: a procedure as a guide file again, every derived line written out. It is itself a valid
// guide.
#pragma once

#include "model/model.hpp"

#include <string>

namespace matchmark::plan {

// `uses` are the paths to name in `use` lines, as seen from where the text will stand. Not in
// canonical layout: tidy it.
std::string written_out(const SourceMap& sources, const model::Model& model,
                        const model::Procedure& procedure, const std::vector<std::string>& uses);

} // namespace matchmark::plan
