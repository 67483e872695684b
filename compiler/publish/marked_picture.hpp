// Pictures with their balloons over them, as files of their own.
#pragma once

#include "publish/shown_picture.hpp"

namespace matchmark::publish {

// As `shown_pictures`, but a picture with marks is an SVG that holds the picture as it is and the
// balloons over it: nothing is burnt in. A picture that is shown twice with different marks has
// those of both.
ShownPictures marked_pictures(const guide::Document& document, const guide::Assets& assets);

} // namespace matchmark::publish
