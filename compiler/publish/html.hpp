// The guide as one page of HTML: to read on a screen at the bench, or to print.
#pragma once

#include "guide/document.hpp"

namespace matchmark::publish {

// The page holds all that it shows: style, pictures, signs. It has no script and asks nothing of
// any network. A picture that `assets` lacks, or that is neither PNG, JPEG, GIF, WebP nor SVG, is
// shown by its alternative text.
std::string html(const guide::Document& document, const guide::Assets& assets);

} // namespace matchmark::publish
