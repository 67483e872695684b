// Text to tree: reads one file of the language.
#pragma once

#include "diagnostics/diagnostic.hpp"
#include "syntax/tree.hpp"

#include <cstddef>
#include <vector>

namespace matchmark::syntax {

// The longest line that is read, in bytes; a longer one is a finding, and is left out.
inline constexpr std::size_t longest_line = 65536;
// The longest name and the longest number, in bytes; a longer one breaks its line. A number of so
// many figures is finite whatever is multiplied with it.
inline constexpr std::size_t longest_name = 256;
inline constexpr std::size_t longest_number = 32;
// After so many lines of a file that make no sense, the rest of it is not read.
inline constexpr std::size_t most_slips = 1000;

// Total: always gives a tree with one Line for each physical line, and appends one finding of rule
// "syntax" for every line that breaks the grammar, up to `most_slips`; the lines after those are
// broken, and one more finding says so. A line with a finding has LineShape::broken; its
// keyword, if it has one, still says what the lines below belong to.
//
// Accepts LF and CRLF line ends and a byte order mark. A tab in the indentation reaches to the next
// column that is a multiple of 8. Takes time in proportion to the file's length, whatever is in it.
File parse(const SourceMap& sources, FileId id, std::vector<Diagnostic>& findings);

} // namespace matchmark::syntax
