// The parts library as one page of Markdown: docs/parts.md.
#pragma once

#include "drive/catalogue.hpp"
#include "source/text.hpp"

#include <string>

namespace matchmark::drive {

// By the library's files, which are its subjects; each with what the file's head says of its
// sources, then a table for each sort of declaration. The same library gives the same bytes.
std::string parts_page(const SourceMap& sources, const model::Model& model,
                       const std::vector<Entry>& entries);

} // namespace matchmark::drive
