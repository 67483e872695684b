// Findings in SARIF 2.1.0 (OASIS Standard, with Errata 01 of 2023), for code hosts and editors.
#pragma once

#include "diagnostics/diagnostic.hpp"

#include <string>
#include <vector>

namespace matchmark::drive {

// One `result` object: where, what, what else belongs to it, and its mend as a fix.
std::string sarif_result(const SourceMap& sources, const Diagnostic& finding);

// The whole log of one run. `results`: JSON objects of `sarif_result`, in their order; the rules
// that they name come with the words of their pages. `whole`: every file could be read.
std::string sarif_log(const std::string& results, bool whole);

} // namespace matchmark::drive
