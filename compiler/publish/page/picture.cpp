// A picture with numbered balloons on it and the key beside it, as on an assembly drawing.
//
// A thing has one number on all pictures of a guide, and a leader runs from the balloon to the
// thing, whose place stays free to see: the idea of item references in ISO 6433.
#include "publish/page/picture.hpp"

#include "model/quantity.hpp"
#include "publish/fixed_words.hpp"
#include "publish/page/text.hpp"
#include "source/markup.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace matchmark::publish {

using guide::Mark;
using guide::Picture;
using model::Point;

namespace {

// The width of a picture at 380 px, less the page's margins; 4 to 3 is the usual shape of a photo.
constexpr double least_width = 330;
constexpr double usual_shape = 4.0 / 3;
constexpr double clear_of_point = 17;
constexpr double clear_of_balloon = 27;

constexpr std::array<Offset, 8> directions{
    {{26, -20}, {-26, -20}, {26, 20}, {-26, 20}, {0, -32}, {0, 32}, {34, 0}, {-34, 0}}};

double distance(Point a, Point b) { return std::hypot(a.x - b.x, a.y - b.y); }

// A balloon that is out of sight is worst, then one upon another, then one upon a point; outwards
// is a mere preference.
double cost(Point place, Offset offset, double least_height, const std::vector<Point>& points,
            const std::vector<Point>& balloons) {
    const Point balloon{place.x + offset.x, place.y + offset.y};
    double sum = 0;
    if (balloon.x < -14 || balloon.y < -14 || balloon.x > least_width + 14 ||
        balloon.y > least_height + 14) {
        sum += 1000;
    }
    for (const Point& other : balloons) {
        sum += distance(balloon, other) < clear_of_balloon ? 100 : 0;
    }
    for (const Point& other : points) {
        sum += distance(balloon, other) < clear_of_point ? 50 : 0;
    }
    const Point out{place.x - least_width / 2, place.y - least_height / 2};
    const double length = std::hypot(out.x, out.y);
    const double reach = std::hypot(offset.x, offset.y);
    return length == 0 ? sum : sum - (out.x * offset.x + out.y * offset.y) / (length * reach);
}

std::string percent(double fraction) {
    const double bounded = std::clamp(std::isfinite(fraction) ? fraction : 0.0, 0.0, 1.0);
    return model::number_text(std::round(bounded * 10000) / 100) + "%";
}

std::string pixels(double value) { return model::number_text(std::round(value)) + "px"; }

std::string balloon(const Mark& mark, Point point, Offset offset) {
    const double length = std::hypot(offset.x, offset.y);
    const double degrees = std::round(std::atan2(offset.y, offset.x) * 180 / 3.14159265358979);
    const std::string at = "left:" + percent(point.x) + ";top:" + percent(point.y);
    return "<span class=\"point\" style=\"" + at + "\"><i style=\"width:" + pixels(length) +
           ";transform:rotate(" + model::number_text(degrees) +
           "deg)\"></i><b style=\"left:" + pixels(offset.x) + ";top:" + pixels(offset.y) + "\">" +
           std::to_string(mark.number) + "</b></span>";
}

std::string balloons(const Picture& picture, double shape) {
    std::vector<Point> points;
    for (const Mark& mark : picture.marks) {
        points.insert(points.end(), mark.points.begin(), mark.points.end());
    }
    const auto offsets = balloon_offsets(points, shape);
    std::string text;
    std::size_t index = 0;
    for (const Mark& mark : picture.marks) {
        for (const Point& point : mark.points) {
            text += balloon(mark, point, offsets[index++]);
        }
    }
    return text;
}

std::string key(const Picture& picture) {
    std::string text;
    for (const Mark& mark : picture.marks) {
        text += "<li><span class=\"number\">" + std::to_string(mark.number) + "</span> " +
                markup_escaped(mark.words) + "</li>\n";
    }
    return text.empty() ? text : "<ul class=\"key\">\n" + text + "</ul>\n";
}

} // namespace

std::vector<Offset> balloon_offsets(const std::vector<Point>& points, double shape) {
    const double height = least_width / (shape > 0 ? shape : usual_shape);
    std::vector<Point> places;
    for (const Point& point : points) {
        places.push_back({point.x * least_width, point.y * height});
    }
    std::vector<Point> taken;
    std::vector<Offset> offsets;
    for (const Point& place : places) {
        const auto best = std::min_element(directions.begin(), directions.end(),
                                           [&](const Offset& left, const Offset& right) {
                                               return cost(place, left, height, places, taken) <
                                                      cost(place, right, height, places, taken);
                                           });
        offsets.push_back(*best);
        taken.push_back({place.x + best->x, place.y + best->y});
    }
    return offsets;
}

std::string figure(const Picture& picture, const ShownPictures& pictures, const Language& in) {
    const std::string words = markup_escaped(picture.alternative_text);
    const auto found = pictures.find(picture.path);
    const bool shown = found != pictures.end();
    std::string text = "<figure>\n";
    if (!shown) {
        text += "<p class=\"missing\">" +
                say_with(in, "Picture not at hand: {words}", "words", words) + "</p>\n";
    } else {
        const double known = found->second.shape;
        const double shape = known > 0 ? known : usual_shape;
        const std::string ratio = model::number_text(std::round(shape * 1000) / 1000);
        text += "<div class=\"picture\" style=\"--shape:" + ratio + "\"><img src=\"" +
                markup_escaped(found->second.source) + "\" alt=\"" + words + "\" />";
        const std::string marks = balloons(picture, known);
        text += marks.empty() ? "" : "<span aria-hidden=\"true\">" + marks + "</span>";
        text += "</div>\n";
    }
    const std::string legend = key(picture);
    const std::string caption =
        !shown || words.empty() ? "" : "<p aria-hidden=\"true\">" + words + "</p>\n";
    if (!legend.empty() || !caption.empty()) {
        text += "<figcaption>\n" + caption + legend + "</figcaption>\n";
    }
    return text + "</figure>\n";
}

} // namespace matchmark::publish
