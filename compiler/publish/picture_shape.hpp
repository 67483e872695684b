// How wide a picture is, in pixels and for its height, read from its first bytes.
#pragma once

#include <string_view>

namespace matchmark::publish {

// Width divided by height, between 1/10 and 10; 0 when the bytes do not say.
double picture_shape(std::string_view bytes);

// Pixels across; 0 for a drawing, which has none, and when the bytes do not say.
double picture_pixels(std::string_view bytes);

// How wide a picture of this shape is printed, in millimetres: as the page's style sheet has it.
double printed_width(double shape);

} // namespace matchmark::publish
