// Walks every procedure over the bench and reports what is left out.
#pragma once

#include "diagnostics/diagnostic.hpp"
#include "model/model.hpp"
#include "syntax/files.hpp"

#include <vector>

namespace matchmark::check {

// Findings of the rules in rules/, for each variant that a guide is for, merged; `# allow RULE:
// reason` comments in `files` are honoured and unused ones reported. `procedures` are the model's
// guides of the file asked about, unfolded.
void check(const SourceMap& sources, const syntax::Files& files, const model::Model& model,
           const std::vector<model::Procedure>& procedures, std::vector<Diagnostic>& findings);

} // namespace matchmark::check
