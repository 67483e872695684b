// A drawing as SVG: text that can be read and searched, and nothing that acts.
#include "draw/lettering.hpp"
#include "draw/paint.hpp"
#include "source/markup.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::draw {

namespace {

std::string escaped(const std::string& words) { return markup_escaped(printable(words)); }

// "12.5": three decimals, zeros at the end left out; never "-0", never a comma.
std::string number(double value) {
    std::string text = fmt::format("{:.3f}", value);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.')) {
        text.pop_back();
    }
    return text == "-0" ? "0" : text;
}

std::string at(const Point& point) { return number(point.x) + " " + number(point.y); }

const char* color(Ink ink) {
    switch (ink) {
    case Ink::black:
        return "#000";
    case Ink::grey:
        return "#595959";
    case Ink::pale:
        return "#e6e6e6";
    case Ink::white:
        return "#fff";
    }
    return "#000";
}

std::string look(const std::optional<Stroke>& stroke, const std::optional<Ink>& fill) {
    std::string text = fmt::format(" fill=\"{}\"", fill ? color(*fill) : "none");
    if (!stroke) {
        return text;
    }
    text += fmt::format(" stroke=\"{}\" stroke-width=\"{}\"", color(stroke->ink),
                        number(stroke->width));
    std::string lengths;
    for (const double length : dashes(*stroke)) {
        lengths += (lengths.empty() ? "" : " ") + number(length);
    }
    if (!lengths.empty()) {
        text += fmt::format(" stroke-dasharray=\"{}\"", lengths);
    }
    return text;
}

void paint(std::string& svg, const std::vector<Shape>& shapes);

struct SvgPainter {
    std::string& svg;

    void operator()(const Line& line) const {
        svg += fmt::format("<line x1=\"{}\" y1=\"{}\" x2=\"{}\" y2=\"{}\"{}/>\n",
                           number(line.from.x), number(line.from.y), number(line.to.x),
                           number(line.to.y), look(line.stroke, std::nullopt));
    }
    void operator()(const Rectangle& box) const {
        svg +=
            fmt::format("<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"", number(box.corner.x),
                        number(box.corner.y), number(box.width), number(box.height));
        if (box.rounding > 0) {
            svg += fmt::format(" rx=\"{0}\" ry=\"{0}\"", number(box.rounding));
        }
        svg += look(box.stroke, box.fill) + "/>\n";
    }
    void operator()(const Circle& circle) const {
        svg += fmt::format("<circle cx=\"{}\" cy=\"{}\" r=\"{}\"{}/>\n", number(circle.centre.x),
                           number(circle.centre.y), number(circle.radius),
                           look(circle.stroke, circle.fill));
    }
    void operator()(const Path& path) const {
        svg += "<path d=\"M" + at(path.start);
        for (const Piece& piece : path.pieces) {
            svg += piece.curved ? " C" + at(piece.control_1) + " " + at(piece.control_2) + " "
                                : std::string(" L");
            svg += at(piece.to);
        }
        svg += std::string(path.closed ? " Z" : "") + "\"" + look(path.stroke, path.fill) +
               " stroke-linejoin=\"round\"/>\n";
    }
    void operator()(const Text& text) const {
        constexpr const char* anchors[] = {"start", "middle", "end"};
        const std::string place =
            text.upwards ? fmt::format("transform=\"translate({}) rotate(-90)\"", at(text.at))
                         : fmt::format("x=\"{}\" y=\"{}\"", number(text.at.x), number(text.at.y));
        svg += fmt::format("<text {} font-size=\"{}\" text-anchor=\"{}\" fill=\"{}\"{}>{}</text>\n",
                           place, number(text.size), anchors[static_cast<int>(text.align)],
                           color(text.ink), text.bold ? " font-weight=\"bold\"" : "",
                           escaped(text.words));
    }
    void operator()(const Window& window) const {
        const std::string box =
            fmt::format("{} {} {} {}", number(window.corner.x), number(window.corner.y),
                        number(window.width), number(window.height));
        svg += fmt::format("<svg x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" viewBox=\"{}\" "
                           "overflow=\"hidden\">\n",
                           number(window.corner.x), number(window.corner.y), number(window.width),
                           number(window.height), box);
        paint(svg, window.shapes);
        svg += "</svg>\n";
    }
};

void paint(std::string& svg, const std::vector<Shape>& shapes) {
    for (const Shape& shape : shapes) {
        std::visit(SvgPainter{svg}, shape.form);
    }
}

} // namespace

std::vector<double> dashes(const Stroke& stroke) {
    // Dash 12, gap 3, dot 0.5 line widths: ISO 128-2:2020, table 3. On thin lines they are kept
    // long enough to be seen at arm's length.
    const double unit = std::max(stroke.width, 0.25);
    switch (stroke.dash) {
    case Dash::none:
        return {};
    case Dash::hidden:
        return {6 * unit, 3 * unit};
    case Dash::centre:
        return {12 * unit, 3 * unit, unit, 3 * unit};
    case Dash::cut_off:
        return {12 * unit, 3 * unit, unit, 3 * unit, unit, 3 * unit};
    }
    return {};
}

double brightness(Ink ink) {
    switch (ink) {
    case Ink::black:
        return 0;
    case Ink::grey:
        return 0x59 / 255.0;
    case Ink::pale:
        return 0xe6 / 255.0;
    case Ink::white:
        return 1;
    }
    return 0;
}

std::string paint_svg(const Scene& scene) {
    std::string svg = fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0}mm\" height=\"{1}mm\" "
        "viewBox=\"0 0 {0} {1}\" role=\"img\" font-family=\"{2}, Arial, Helvetica, sans-serif\">\n"
        "<title>{3}</title>\n",
        number(scene.width), number(scene.height), font_family, escaped(scene.title));
    if (!scene.alternative_text.empty()) {
        svg += "<desc>" + escaped(scene.alternative_text) + "</desc>\n";
    }
    SvgPainter{svg}(Rectangle{{0, 0}, scene.width, scene.height, 0, std::nullopt, Ink::white});
    paint(svg, scene.shapes);
    return svg + "</svg>\n";
}

} // namespace matchmark::draw
