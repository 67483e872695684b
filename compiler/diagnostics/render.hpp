// Findings as people and programs read them.
#pragma once

#include "diagnostics/diagnostic.hpp"

#include <string>
#include <vector>

namespace matchmark {

// One framed message for a finding, ending in a newline; `more` adds "more: matchmark explain
// RULE".
std::string render_text(const SourceMap& sources, const Diagnostic& finding, bool more = true);

// All findings framed, at most `most` of them, then a count of the rest and a closing tally.
std::string render_text(const SourceMap& sources, const std::vector<Diagnostic>& findings,
                        std::size_t most = 20);

// One object {"findings": [{rule, severity, file, line, column, end_line, end_column, message, why,
// related, edits, variants}]}, ending in a newline.
std::string render_json(const SourceMap& sources, const std::vector<Diagnostic>& findings);

} // namespace matchmark
