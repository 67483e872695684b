// The compiler's own drawings as parts of a page.
#pragma once

#include "guide/document.hpp"

#include <functional>

namespace matchmark::publish {

// All drawings under one heading, each with what it says in words; empty when there are none.
// `source`: where the page finds the drawing of that number, from 0.
std::string drawings(const guide::Document& document,
                     const std::function<std::string(std::size_t)>& source);

} // namespace matchmark::publish
