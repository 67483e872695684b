// Text as HTML, XML and SVG take it.
#pragma once

#include <string>
#include <string_view>

namespace matchmark {

// The text between tags or in an attribute's quotes. What XML 1.0 cannot hold becomes U+FFFD.
std::string markup_escaped(std::string_view text);

} // namespace matchmark
