// Pictures and drawings of a guide's PDF, each with its words.
#include "publish/fixed_words.hpp"
#include "publish/paper/pdf_parts.hpp"
#include "publish/paper/prose.hpp"

#include <algorithm>
#include <cmath>

namespace matchmark::publish {

namespace {

constexpr double widest = 100 * points_per_mm;
constexpr double highest = 85 * points_per_mm;
constexpr double usual_shape = 4.0 / 3;
constexpr double key_room = 120; // beside a picture; with less, the key goes below it
constexpr double between = 14;

// The caption, and below it the key: the number in its ring, the words.
std::vector<Letters> picture_key(const Flow& flow, const guide::Picture& picture, double x,
                                 double y, double width) {
    std::vector<Letters> lines;
    const auto place = [&](const Rich& rich, double size) {
        lines.push_back(letters(flow, rich, {size}, x, y, width, "P"));
        y += lines.back().setting->height + 4;
    };
    Rich caption;
    add(caption, picture.alternative_text);
    place(caption, 9);
    for (const guide::Mark& mark : picture.marks) {
        Rich line;
        Look look;
        look.bold = true;
        look.ringed = true;
        add(line, "\u00a0");
        add(line, std::to_string(mark.number), look);
        add(line, "\u00a0\u00a0");
        add(line, mark.words);
        place(line, 10.5);
    }
    return lines;
}

double end_of(const std::vector<Letters>& lines) {
    return lines.empty() ? 0 : lines.back().y + lines.back().setting->height;
}

void put(Box& box, std::vector<Letters> lines) {
    for (Letters& line : lines) {
        box.pieces.emplace_back(std::move(line));
    }
}

void add_missing(Flow& flow, const Language& in, const guide::Picture& picture) {
    guide::Picture told = picture;
    told.alternative_text =
        say_with(in, "Picture not at hand: {words}", "words", picture.alternative_text);
    auto lines = picture_key(flow, told, flow.left + 10, 8, flow.width - 20);
    Box& box = add_box(flow, end_of(lines) + 8);
    put(box, std::move(lines));
    box.pieces.emplace_back(
        Frame{flow.left + 0.5, 0.5, flow.width - 1, box.height - 1, 1, Ground::none, true});
}

// At its natural size where there is room, else as large as there is; a wide one that would be
// too small to read is turned when it is much larger so.
void add_drawing(Leaflet& leaflet, std::size_t index, double room) {
    constexpr double worth_turning = 1.2;
    constexpr double legible = 0.76; // letters of 2.6 mm are then 2 mm high
    Flow& flow = leaflet.flow;
    const guide::Figure& figure = leaflet.document.figures[index];
    const double width = figure.width_mm * points_per_mm;
    const double height = figure.height_mm * points_per_mm;
    const double upright = std::min({1.0, flow.width / width, room / height});
    const double sideways = std::min({1.0, flow.width / height, room / width});
    DrawingPiece piece{&leaflet.painter, index, flow.left, 0, width, upright, figure.title};
    if (upright < legible && sideways > worth_turning * upright) {
        piece.sideways = true;
        piece.scale = sideways;
    }
    piece.width = width * piece.scale;
    const double taken = piece.sideways ? piece.width : height * piece.scale;
    add_box(flow, taken).pieces.emplace_back(std::move(piece));
}

} // namespace

void add_picture(Leaflet& leaflet, const guide::Picture& picture) {
    Flow& flow = leaflet.flow;
    leave(flow, 9);
    const auto found = leaflet.pictures.find(picture.path);
    if (found == leaflet.pictures.end() || !read_picture(leaflet.printer.gallery, found->second)) {
        add_missing(flow, leaflet.document.language, picture);
        leave(flow, 8);
        return;
    }
    const double shape = found->second.shape > 0 ? found->second.shape : usual_shape;
    const double width = std::min({flow.width, widest, highest * shape});
    const double height = width / shape;
    // Balloons may stand over the edge: room for them on every side.
    const Overhang over = overhang_of(picture, width, height);
    const double x = flow.left + over.left;
    const double taken = over.left + width + std::max(between, over.right + 4);
    const bool below = flow.width - taken < key_room;
    const double whole = over.top + height + over.bottom;
    auto lines = below
                     ? picture_key(flow, picture, flow.left, whole + 6, flow.width)
                     : picture_key(flow, picture, flow.left + taken, over.top, flow.width - taken);
    Box& box = add_box(flow, std::max(whole, end_of(lines)) + 1);
    // Outside the picture, which is painted over it, so that balloons lie over both.
    Frame edge{x - 0.3, over.top - 0.3, width + 0.6, height + 0.6, 0.6};
    edge.grey = true;
    box.pieces.emplace_back(edge);
    box.pieces.emplace_back(PicturePiece{&found->second, &picture, x, over.top, width, height,
                                         picture.alternative_text});
    put(box, std::move(lines));
    leave(flow, 8);
}

void add_figures(Leaflet& leaflet) {
    Flow& flow = leaflet.flow;
    if (leaflet.document.figures.empty()) {
        return;
    }
    open(flow, "Sect");
    add_heading(leaflet, "drawings");
    const Margins& margins = leaflet.printer.margins;
    const double room = (leaflet.printer.size.height - margins.top - margins.bottom) * 0.88;
    for (std::size_t i = 0; i < leaflet.document.figures.size(); ++i) {
        const guide::Figure& figure = leaflet.document.figures[i];
        begin_outer(flow);
        add_label(flow, figure.title);
        if (leaflet.painter && figure.width_mm > 0 && figure.height_mm > 0) {
            add_drawing(leaflet, i, room);
        }
        leave(flow, 6);
        end_outer(flow);
        add_prose(flow, figure.alternative_text, {9, 3});
        leave(flow, 10);
    }
    close(flow);
}

} // namespace matchmark::publish
