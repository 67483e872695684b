// The guide as a HowTo of schema.org, in JSON-LD: for search and for other programs.
#pragma once

#include "guide/document.hpp"

namespace matchmark::publish {

// docs/forms.md says which part of a guide becomes which property.
std::string how_to(const guide::Document& document);

} // namespace matchmark::publish
