// The one canonical layout of a file, so that a change of layout never hides a change of fact.
//
// Details stand two columns in with their facts from column 14, details of a photo four in; one
// space between words; one blank line before sections, steps, guides and kinds, never two; what
// fits moves up to its declaration's line. Comments and prose are kept word for word, and so are
// terms, only closer or further apart.
#pragma once

#include "syntax/tree.hpp"

#include <string>

namespace matchmark {

// The file's text in the canonical layout: LF line ends, no byte order mark, a final newline. A
// file with a syntax error is returned as it is. Tidying twice changes nothing more.
std::string tidy(const SourceMap& sources, const syntax::File& file);

} // namespace matchmark
