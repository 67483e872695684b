// What the edits of a finding would take from the source and put into it, as lines to show.
#pragma once

#include "diagnostics/diagnostic.hpp"

#include <string>
#include <vector>

namespace matchmark {

// A run of neighbouring lines that change. Lines that stay as they are, are left out.
struct EditPreview {
    FileId file = 0;
    std::uint32_t line = 1; // the first one that changes, or before which is inserted
    std::vector<std::string> removed;
    std::vector<std::string> added;
};

// In order of place. Edits that point past their file are left out.
std::vector<EditPreview> preview_edits(const SourceMap& sources, const std::vector<Edit>& edits);

} // namespace matchmark
