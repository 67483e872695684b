// Applies the edits that findings carry.
#pragma once

#include "diagnostics/diagnostic.hpp"

#include <map>
#include <string>
#include <vector>

namespace matchmark {

struct Mended {
    std::map<FileId, std::string> texts; // new text of each file that changed
    std::size_t applied = 0;             // findings whose edits were all applied
    std::size_t left = 0; // findings that carry no edit, or whose edits overlap an earlier one's
};

// Applies all edits of a finding or none; in order of place. Insertions at one point keep the
// findings' order. Built-in files are never edited. `all` also applies edits that are not marked
// safe.
Mended mend(const SourceMap& sources, const std::vector<Diagnostic>& findings, bool all);

// The change as unified diff hunks ("--- a/path", "+++ b/path"), three lines of context.
std::string unified_diff(const std::string& path, const std::string& before,
                         const std::string& after);

} // namespace matchmark
