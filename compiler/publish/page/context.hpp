// What the parts of a page look up while they are written.
#pragma once

#include "publish/shown_picture.hpp"

namespace matchmark::publish {

struct PageContext {
    const guide::Document& document;
    const ShownPictures& pictures;
};

} // namespace matchmark::publish
