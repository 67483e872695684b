// How wide a picture is, in pixels and for its height, read from its first bytes.
#include "publish/picture_shape.hpp"

#include "publish/page/text.hpp"

#include <algorithm>
#include <array>
#include <charconv>

namespace matchmark::publish {

namespace {

unsigned byte_at(std::string_view bytes, std::size_t at) {
    return at < bytes.size() ? static_cast<unsigned char>(bytes[at]) : 0U;
}

unsigned big_endian(std::string_view bytes, std::size_t at) {
    return byte_at(bytes, at) << 8U | byte_at(bytes, at + 1);
}

unsigned little_endian(std::string_view bytes, std::size_t at) {
    return byte_at(bytes, at + 1) << 8U | byte_at(bytes, at);
}

double ratio(double width, double height) { return width > 0 && height > 0 ? width / height : 0; }

struct Size {
    double width = 0;
    double height = 0;
};

// ITU-T T.81, B.1.1.4: segments until a start of frame (C0 to CF, but for C4, C8 and CC).
Size jpeg_size(std::string_view bytes) {
    std::size_t at = 2;
    while (at + 9 < bytes.size() && byte_at(bytes, at) == 0xff) {
        const unsigned marker = byte_at(bytes, at + 1);
        const bool frame =
            marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
        if (frame) {
            return {static_cast<double>(big_endian(bytes, at + 7)),
                    static_cast<double>(big_endian(bytes, at + 5))};
        }
        at += 2U + big_endian(bytes, at + 2);
    }
    return {};
}

// The value of an attribute of the root element; empty when it has none.
std::string_view attribute(std::string_view tag, std::string_view name) {
    for (auto at = tag.find(name); at != std::string_view::npos; at = tag.find(name, at + 1)) {
        const std::size_t open = at + name.size() + 1;
        const bool alone =
            at > 0 && std::string_view(" \t\r\n").find(tag[at - 1]) != std::string_view::npos;
        if (!alone || open >= tag.size() || tag[open - 1] != '=') {
            continue;
        }
        const auto close = tag.find(tag[open], open + 1);
        return close == std::string_view::npos ? std::string_view()
                                               : tag.substr(open + 1, close - open - 1);
    }
    return {};
}

double number_at(std::string_view text, std::size_t& at) {
    at = std::min(text.find_first_not_of(" ,\t\r\n", at), text.size());
    double number = 0;
    const auto read = std::from_chars(text.data() + at, text.data() + text.size(), number);
    at = static_cast<std::size_t>(read.ptr - text.data());
    return read.ec == std::errc{} ? number : 0;
}

Size svg_size(std::string_view bytes) {
    const auto open = bytes.find("<svg");
    const std::string_view tag = bytes.substr(open, bytes.find('>', open) - open);
    if (const std::string_view box = attribute(tag, "viewBox"); !box.empty()) {
        std::array<double, 4> numbers{};
        std::size_t at = 0;
        for (double& number : numbers) {
            number = number_at(box, at);
        }
        return {numbers[2], numbers[3]};
    }
    std::size_t begin = 0;
    const double width = number_at(attribute(tag, "width"), begin);
    begin = 0;
    return {width, number_at(attribute(tag, "height"), begin)};
}

// The header chunk of PNG has width and height in 4 bytes each; pictures are smaller than 65,536
// pixels.
Size size_of(std::string_view bytes, std::string_view type) {
    if (type == "image/png") {
        return {static_cast<double>(big_endian(bytes, 18)),
                static_cast<double>(big_endian(bytes, 22))};
    }
    if (type == "image/gif") {
        return {static_cast<double>(little_endian(bytes, 6)),
                static_cast<double>(little_endian(bytes, 8))};
    }
    if (type == "image/jpeg") {
        return jpeg_size(bytes);
    }
    return type == "image/svg+xml" ? svg_size(bytes) : Size{};
}

} // namespace

double picture_shape(std::string_view bytes) {
    const Size size = size_of(bytes, picture_type(bytes));
    const double shape = ratio(size.width, size.height);
    return shape == 0 ? 0 : std::clamp(shape, 0.1, 10.0);
}

double picture_pixels(std::string_view bytes) {
    const std::string_view type = picture_type(bytes);
    return type == "image/svg+xml" ? 0 : size_of(bytes, type).width;
}

double printed_width(double shape) { return shape > 0 ? std::min(100.0, 85.0 * shape) : 100.0; }

} // namespace matchmark::publish
