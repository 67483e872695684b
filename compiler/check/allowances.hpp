// `# allow RULE: reason` comments: silence for one finding, with a reason.
#pragma once

#include "diagnostics/diagnostic.hpp"
#include "syntax/tree.hpp"

#include <vector>

namespace matchmark::check {

// Takes out the findings that a comment on the lines just above them allows; reports comments that
// allow nothing, name no rule, or give no reason.
void apply_allowances(const SourceMap& sources, const syntax::File& file,
                      std::vector<Diagnostic>& findings);

} // namespace matchmark::check
