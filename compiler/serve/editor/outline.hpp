// The shape of a file: what it declares, what can be folded, the colour of each word, its layout.
#pragma once

#include "serve/editor/workspace.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace matchmark::serve {

// Declarations; steps stand below their guide.
std::vector<Symbol> outline(Workspace& workspace, const std::string& path);
// Declarations of all files of the editor, whose name or title has the letters of the query in it.
std::vector<FoundSymbol> find_symbols(Workspace& workspace, const std::string& query);
std::vector<Fold> folds(Workspace& workspace, const std::string& path);
// Five numbers for each word, as the protocol has them (LSP 3.17, "Semantic Tokens").
std::vector<std::uint32_t> semantic_tokens(Workspace& workspace, const std::string& path);
// The edits that lay the file out; none when it has a line that cannot be understood.
std::vector<TextEdit> layout_edits(Workspace& workspace, const std::string& path);

} // namespace matchmark::serve
