// Text and bytes made safe to stand in a page.
#pragma once

#include <string>
#include <string_view>

namespace matchmark::publish {

// The page without control characters, which HTML does not allow; each becomes U+FFFD.
std::string without_controls(std::string_view page);

// "image/png", by the first bytes; empty when it is no picture that a page shows.
std::string_view picture_type(std::string_view bytes);

std::string base64(std::string_view bytes);

} // namespace matchmark::publish
