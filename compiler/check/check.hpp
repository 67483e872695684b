// Walks every procedure over the bench and reports what is left out.
#pragma once

#include "check/allowances.hpp"
#include "diagnostics/diagnostic.hpp"
#include "model/model.hpp"

#include <vector>

namespace matchmark::check {

// Findings of the rules in rules/, for each variant that a guide is for, merged; `# allow RULE:
// reason` comments are honoured and unused ones reported. `root` is the file asked about, which
// they stand in, and `procedures` are its guides, unfolded.
void check(const SourceMap& sources, FileId root, const std::vector<Allowance>& allowances,
           const model::Model& model, const std::vector<model::Procedure>& procedures,
           std::vector<Diagnostic>& findings);

} // namespace matchmark::check
