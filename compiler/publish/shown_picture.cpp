// Pictures as a form shows them: bytes made harmless, and where they are found.
#include "publish/shown_picture.hpp"

#include "publish/markup_tree.hpp"
#include "publish/page/text.hpp"
#include "publish/picture_shape.hpp"

namespace matchmark::publish {

ShownPictures shown_pictures(const guide::Assets& assets) {
    ShownPictures shown;
    for (const auto& [path, bytes] : assets.files) {
        ShownPicture picture;
        picture.type = picture_type(bytes);
        picture.shape = picture_shape(bytes);
        picture.bytes = picture.type == "image/svg+xml" ? harmless_svg(bytes) : bytes;
        if (!picture.type.empty() && !picture.bytes.empty()) {
            shown.emplace(path, std::move(picture));
        }
    }
    return shown;
}

std::string picture_ending(const std::string& type) {
    if (type == "image/svg+xml") {
        return ".svg";
    }
    if (type == "image/jpeg") {
        return ".jpg";
    }
    return "." + type.substr(type.find('/') + 1);
}

} // namespace matchmark::publish
