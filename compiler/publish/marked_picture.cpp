// Pictures with their balloons over them, as files of their own.
#include "publish/marked_picture.hpp"

#include "model/quantity.hpp"
#include "publish/page/picture.hpp"
#include "publish/page/text.hpp"
#include "source/markup.hpp"

#include <algorithm>
#include <cmath>

namespace matchmark::publish {

namespace {

using guide::Mark;

// Balloons are placed for this width: see page_picture.
constexpr double width = 330;
constexpr double usual_shape = 4.0 / 3;

struct MarksOf {
    std::string words;
    std::vector<Mark> marks;
};

void gather(std::map<std::string, MarksOf>& all, const std::vector<guide::Picture>& pictures) {
    for (const guide::Picture& picture : pictures) {
        MarksOf& one = all[picture.path];
        one.words = one.words.empty() ? picture.alternative_text : one.words;
        for (const Mark& mark : picture.marks) {
            const bool is_there =
                std::any_of(one.marks.begin(), one.marks.end(),
                            [&](const Mark& other) { return other.number == mark.number; });
            if (!is_there) {
                one.marks.push_back(mark);
            }
        }
    }
}

std::string at(const char* name, double value) {
    return std::string(" ") + name + "=\"" + model::number_text(std::round(value * 100) / 100) +
           "\"";
}

double inside(double fraction) {
    return std::clamp(std::isfinite(fraction) ? fraction : 0.0, 0.0, 1.0);
}

std::string balloon(unsigned number, double x, double y, Offset offset) {
    const std::string line =
        at("x1", x) + at("y1", y) + at("x2", x + offset.x) + at("y2", y + offset.y);
    return "<line" + line + " stroke=\"#fff\" stroke-width=\"4\"/><line" + line +
           " stroke=\"#000\" stroke-width=\"2\"/><circle" + at("cx", x) + at("cy", y) +
           " r=\"4\" stroke=\"#fff\" stroke-width=\"1.5\"/><circle" + at("cx", x + offset.x) +
           at("cy", y + offset.y) + " r=\"12\" fill=\"#fff\" stroke=\"#000\" stroke-width=\"2\"/>" +
           "<text" + at("x", x + offset.x) + at("y", y + offset.y + 5) + ">" +
           std::to_string(number) + "</text>\n";
}

std::string with_balloons(const ShownPicture& picture, const MarksOf& marks) {
    const double height = width / (picture.shape > 0 ? picture.shape : usual_shape);
    std::vector<model::Point> points;
    for (const Mark& mark : marks.marks) {
        for (const model::Point& point : mark.points) {
            points.push_back({inside(point.x), inside(point.y)});
        }
    }
    const std::vector<Offset> offsets = balloon_offsets(points, picture.shape);
    const std::string w = model::number_text(width + 28);
    const std::string h = model::number_text(std::round(height) + 28);
    std::string text = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"-14 -14 " + w + " " +
                       h + "\" width=\"" + model::number_text(2 * (width + 28)) +
                       "\" role=\"img\">\n<title>" + markup_escaped(marks.words) +
                       "</title>\n<rect x=\"-14\" y=\"-14\" width=\"" + w + "\" height=\"" + h +
                       "\" fill=\"#fff\"/>\n<image width=\"" + model::number_text(width) +
                       "\" height=\"" + model::number_text(std::round(height * 100) / 100) +
                       "\" href=\"data:" + picture.type + ";base64," + base64(picture.bytes) +
                       "\"/>\n<g font-family=\"Liberation Sans, Arial, sans-serif\" "
                       "font-size=\"15\" font-weight=\"bold\" text-anchor=\"middle\">\n";
    std::size_t index = 0;
    for (const Mark& mark : marks.marks) {
        for (std::size_t i = 0; i < mark.points.size(); ++i) {
            const model::Point point = points[index];
            text += balloon(mark.number, point.x * width, point.y * height, offsets[index]);
            ++index;
        }
    }
    return text + "</g>\n</svg>\n";
}

} // namespace

ShownPictures marked_pictures(const guide::Document& document, const guide::Assets& assets) {
    std::map<std::string, MarksOf> marks;
    gather(marks, document.pictures);
    for (const guide::Section& section : document.sections) {
        for (const guide::Step& step : section.steps) {
            gather(marks, step.pictures);
        }
    }
    ShownPictures pictures = shown_pictures(assets);
    for (auto& [path, picture] : pictures) {
        const auto found = marks.find(path);
        if (found != marks.end() && !found->second.marks.empty()) {
            picture.bytes = with_balloons(picture, found->second);
            picture.type = "image/svg+xml";
        }
    }
    return pictures;
}

} // namespace matchmark::publish
