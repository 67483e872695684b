// How wide a picture is for its height, read from its first bytes.
#pragma once

#include <string_view>

namespace matchmark::publish {

// Width divided by height, between 1/10 and 10; 0 when the bytes do not say.
double picture_shape(std::string_view bytes);

} // namespace matchmark::publish
