// The guide as an EPUB 3.3 book of one chapter, for tablets and readers.
#pragma once

#include "guide/document.hpp"

namespace matchmark::publish {

// Has the same parts as the page, without script. `created`: as for `pdf`. The same arguments give
// the same bytes. Empty when the file could not be made.
std::string epub(const guide::Document& document, const guide::Assets& assets,
                 const std::string& created);

} // namespace matchmark::publish
