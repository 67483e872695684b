// Text as HTML, XML and SVG take it, and the addresses in them.
#pragma once

#include <string>
#include <string_view>

namespace matchmark {

// The text between tags or in an attribute's quotes. What XML 1.0 cannot hold becomes U+FFFD.
std::string markup_escaped(std::string_view text);

// A path as a part of an address: bytes outside the unreserved set of RFC 3986, slashes apart, are
// written %XX.
std::string address_escaped(std::string_view path);

} // namespace matchmark
