// Pictures as a form shows them: bytes made harmless, and where they are found.
#pragma once

#include "guide/document.hpp"

#include <map>
#include <string>

namespace matchmark::publish {

struct ShownPicture {
    std::string type;   // "image/png"; empty when it is no picture that a page shows
    std::string bytes;  // of a drawing, without what could run or fetch
    double shape = 0;   // width divided by height; 0 when it is not known
    std::string source; // where the form finds it: a `data:` address, a file's name
};

// By path, as in Assets.
using ShownPictures = std::map<std::string, ShownPicture>;

// What can be shown of the assets; `source` is still empty.
ShownPictures shown_pictures(const guide::Assets& assets);

// ".png", by the type.
std::string picture_ending(const std::string& type);

} // namespace matchmark::publish
