// What is needed for the work, and what is left of it, as parts of a page.
#pragma once

#include "guide/document.hpp"

namespace matchmark::publish {

// Protective gear, tools, spares, supplies with their cost, fasteners; empty when nothing is
// needed.
std::string needs(const guide::Document& document);

// What the work voids, and what goes to a collecting point; empty when there is neither.
std::string afterwards(const guide::Document& document);

} // namespace matchmark::publish
