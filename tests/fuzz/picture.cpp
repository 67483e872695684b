// Any bytes may be a photo or a drawing: its shape is a number within bounds, and what is left of a
// drawing holds nothing that could run or fetch, and stays so when it is cleaned again.
#include "fuzz/fuzz.hpp"

#include "publish/marked_picture.hpp"
#include "publish/markup_tree.hpp"
#include "publish/picture_shape.hpp"

#include <algorithm>
#include <string>

using namespace matchmark;

namespace {

void demand_no_harm(const std::string& drawing) {
    std::string small = drawing;
    std::transform(small.begin(), small.end(), small.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
    for (const char* harm : {"<script", "<!doctype", "<!entity", "<foreignobject", "<animate"})
        fuzz::demand(small.find(harm) == std::string::npos, "a drawing holds nothing that runs");
}

void put_balloons_on(std::string_view bytes) {
    guide::Document document;
    guide::Picture picture;
    picture.path = "p";
    picture.marks.push_back({1, "4 lid <screws>", {{0.1, 0.2}, {0.1, 0.21}, {1, 1}}});
    document.pictures.push_back(picture);
    guide::Assets assets;
    assets.files.emplace("p", std::string(bytes));
    for (const auto& [path, shown] : publish::marked_pictures(document, assets))
        fuzz::demand(!shown.bytes.empty(), "a picture that is shown has bytes");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view bytes = fuzz::text_of(data, size);
    const double shape = publish::picture_shape(bytes);
    fuzz::demand(shape == 0 || (shape >= 0.1 && shape <= 10), "a shape is within bounds");
    fuzz::demand(publish::picture_pixels(bytes) >= 0, "a width is not negative");
    const double width = publish::printed_width(shape);
    fuzz::demand(width > 0 && width <= 100, "a printed width is within the page");
    const std::string drawing = publish::harmless_svg(bytes);
    demand_no_harm(drawing);
    if (!drawing.empty())
        fuzz::demand(publish::harmless_svg(drawing) == drawing, "cleaning twice changes nothing");
    put_balloons_on(bytes);
    return 0;
}
