// Safety signs as small drawings inside a page.
#pragma once

#include "guide/document.hpp"

namespace matchmark::publish {

// The sign of that name with its words for who cannot see it; empty when the document has none.
std::string sign(const guide::Document& document, const std::string& name);

} // namespace matchmark::publish
