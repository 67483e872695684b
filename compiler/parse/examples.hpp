// A line of each sort as it should look, for whoever wrote one that does not.
#pragma once

#include "parse/bodies.hpp"

#include <string_view>

namespace matchmark::syntax {

// `holds lid to base`: a line that opens with this keyword in this body. Empty for what needs no
// example.
std::string_view example_line(Body body, Keyword keyword);

} // namespace matchmark::syntax
