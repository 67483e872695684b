// `# allow RULE: reason` comments: silence for one finding, with a reason.
#pragma once

#include "diagnostics/diagnostic.hpp"
#include "syntax/tree.hpp"

#include <string>
#include <vector>

namespace matchmark::check {

struct Allowance {
    std::string rule;
    bool has_reason = false;
    Span span;              // the comment
    std::uint32_t line = 0; // of the first line below it that is no comment
};

std::vector<Allowance> allowances_of(const SourceMap& sources, const syntax::File& file);

// Takes out the findings that a comment on the lines just above them allows; reports comments that
// allow nothing, name no rule, or give no reason.
void apply_allowances(const SourceMap& sources, const std::vector<Allowance>& allowances,
                      std::vector<Diagnostic>& findings);

} // namespace matchmark::check
