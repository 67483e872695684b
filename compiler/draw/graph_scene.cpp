// Boxes and arrows as a drawing: measured, laid out, painted.
#include "draw/graph_scene.hpp"

#include "draw/layout.hpp"
#include "draw/lettering.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace matchmark::draw {

namespace {

constexpr double padding = 1.8;
constexpr double title_size = 3.2;
constexpr double line_size = 2.6;
constexpr double graph_leading = 1.25; // from line to line, in sizes
constexpr double part_gap = 8;         // between what is laid out apart

// How a graph is laid onto the sheet.
struct Arrangement {
    Run run = Run::rightwards;
    double widest_text = 46;
    bool titles_alone = false;
    bool headed = true;
    double margin = 8;
    double width = 180; // at least, between the margins
};

// A box with its words broken into lines.
struct Measured {
    std::vector<std::string> title;
    std::vector<std::string> lines;
    Size size;
};

Measured measure(const Box& box, const Arrangement& arranged) {
    Measured measured;
    const bool bold = box.form != BoxForm::tie;
    const double size = box.form == BoxForm::tie ? line_size : title_size;
    double width = 8;
    const auto set = [&](const std::string& words, double letters, bool heavy, std::size_t most) {
        Lines lines = set_in_lines(words, arranged.widest_text, letters, heavy, most);
        width = std::max(width, lines.width);
        return lines.words;
    };
    measured.title = set(box.title, size, bold, 3);
    for (const std::string& line : arranged.titles_alone ? std::vector<std::string>{} : box.lines) {
        for (std::string& piece : set(line, line_size, false, 2)) {
            measured.lines.push_back(std::move(piece));
        }
    }
    const double height = graph_leading * (size * static_cast<double>(measured.title.size()) +
                                           line_size * static_cast<double>(measured.lines.size()));
    const double ends = box.form == BoxForm::source ? 2.4 : 0;
    measured.size = {width + 2 * padding + ends, height + 2 * padding + ends / 2};
    return measured;
}

// A piece of the graph with its boxes' places, counted from its own top left.
struct Island {
    std::vector<std::size_t> boxes;
    std::vector<std::size_t> links;
    Placement placed;
};

// When the layout fails, the boxes stand one below the other: nothing is lost.
void stand_in_a_column(Placement& placed, const std::vector<Size>& sizes) {
    placed = {};
    for (const Size& size : sizes) {
        placed.centres.push_back({size.width / 2, placed.size.height + size.height / 2});
        placed.size = {std::max(placed.size.width, size.width),
                       placed.size.height + size.height + 2};
    }
}

Island island(const Graph& graph, const std::vector<Measured>& measured,
              std::vector<std::size_t> boxes, Run run) {
    Island made;
    std::vector<std::size_t> place(graph.boxes.size(), graph.boxes.size());
    std::vector<Size> sizes;
    for (const std::size_t box : boxes) {
        place[box] = sizes.size();
        sizes.push_back(measured[box].size);
    }
    std::vector<std::pair<std::size_t, std::size_t>> pairs;
    for (std::size_t i = 0; i < graph.links.size(); ++i) {
        const Link& link = graph.links[i];
        if (place[link.from] != graph.boxes.size()) {
            pairs.emplace_back(place[link.from], place[link.to]);
            made.links.push_back(i);
        }
    }
    if (boxes.size() > 1) {
        made.placed = lay_out(sizes, pairs, run);
    }
    if (made.placed.centres.size() != boxes.size()) {
        stand_in_a_column(made.placed, sizes);
    }
    made.placed.routes.resize(pairs.size());
    made.boxes = std::move(boxes);
    return made;
}

Ink ink_of(Emphasis emphasis) { return emphasis == Emphasis::quiet ? Ink::grey : Ink::black; }

double scene_width_of(Emphasis emphasis) {
    return emphasis == Emphasis::quiet ? thin : emphasis == Emphasis::strong ? widest : usual;
}

void paint_words(Scene& scene, const Box& box, const Measured& measured, Point top) {
    const bool tie = box.form == BoxForm::tie;
    const double size = tie ? line_size : title_size;
    double y = top.y;
    for (const std::string& line : measured.title) {
        y += size * graph_leading;
        add(scene,
            Text{{top.x, y - size * 0.3}, line, size, Align::middle, !tie, ink_of(box.emphasis)});
    }
    for (const std::string& line : measured.lines) {
        y += line_size * graph_leading;
        add(scene, Text{{top.x, y - line_size * 0.3},
                        line,
                        line_size,
                        Align::middle,
                        false,
                        ink_of(box.emphasis)});
    }
}

void paint_box(Scene& scene, const Box& box, const Measured& measured, Point centre) {
    const Size size = measured.size;
    const Point corner{centre.x - size.width / 2, centre.y - size.height / 2};
    const Stroke stroke{scene_width_of(box.emphasis), ink_of(box.emphasis)};
    const double rounding = box.form == BoxForm::tie ? std::min(size.height / 2, 2.6) : 0;
    const std::optional<Ink> fill =
        box.emphasis == Emphasis::strong ? std::optional{Ink::pale} : Ink::white;
    add(scene, Rectangle{corner, size.width, size.height, rounding, stroke, fill});
    if (box.form == BoxForm::source) {
        constexpr double inset = 1;
        add(scene, Rectangle{{corner.x + inset, corner.y + inset},
                             size.width - 2 * inset,
                             size.height - 2 * inset,
                             0,
                             Stroke{thin, stroke.ink},
                             std::nullopt});
    }
    const double words = graph_leading * ((box.form == BoxForm::tie ? line_size : title_size) *
                                              static_cast<double>(measured.title.size()) +
                                          line_size * static_cast<double>(measured.lines.size()));
    paint_words(scene, box, measured, {centre.x, centre.y - words / 2});
}

void paint_head(Scene& scene, Point tip, Point from, Emphasis emphasis) {
    const double length = std::hypot(tip.x - from.x, tip.y - from.y);
    if (length < 0.01) {
        return;
    }
    const double size = emphasis == Emphasis::strong ? 3 : 2.2;
    const Point along{(tip.x - from.x) / length * size, (tip.y - from.y) / length * size};
    const Point foot{tip.x - along.x, tip.y - along.y};
    const Point across{-along.y * 0.32, along.x * 0.32};
    Path head;
    head.start = tip;
    head.pieces = {{false, {}, {}, {foot.x + across.x, foot.y + across.y}},
                   {false, {}, {}, {foot.x - across.x, foot.y - across.y}}};
    head.closed = true;
    head.fill = ink_of(emphasis);
    add(scene, std::move(head));
}

void paint_link(Scene& scene, const Link& link, const Route& route, Point origin) {
    if (route.curve.size() < 4) {
        return;
    }
    const auto moved = [&](const Point& p) { return Point{p.x + origin.x, p.y + origin.y}; };
    Path path;
    path.start = moved(route.curve[0]);
    for (std::size_t i = 1; i + 2 < route.curve.size(); i += 3) {
        path.pieces.push_back(
            {true, moved(route.curve[i]), moved(route.curve[i + 1]), moved(route.curve[i + 2])});
    }
    path.stroke = Stroke{scene_width_of(link.emphasis), ink_of(link.emphasis),
                         link.one_of_ways ? Dash::hidden : Dash::none};
    const Point tip = path.pieces.back().to;
    Point before = path.pieces.back().control_2;
    if (std::hypot(tip.x - before.x, tip.y - before.y) < 0.01) {
        before = path.pieces.back().control_1;
    }
    add(scene, std::move(path));
    if (link.arrow) {
        paint_head(scene, tip, before, link.emphasis);
    }
}

// Quiet first, so that what matters lies on top.
void paint_island(Scene& scene, const Graph& graph, const std::vector<Measured>& measured,
                  const Island& island, Point origin) {
    for (const Emphasis emphasis : {Emphasis::quiet, Emphasis::plain, Emphasis::strong}) {
        for (std::size_t i = 0; i < island.links.size(); ++i) {
            const Link& link = graph.links[island.links[i]];
            if (link.emphasis == emphasis) {
                paint_link(scene, link, island.placed.routes[i], origin);
            }
        }
    }
    for (std::size_t i = 0; i < island.boxes.size(); ++i) {
        const Point& centre = island.placed.centres[i];
        paint_box(scene, graph.boxes[island.boxes[i]], measured[island.boxes[i]],
                  {centre.x + origin.x, centre.y + origin.y});
    }
}

// The largest first, unless their order says something: what stands beside each other in a row is
// then of like height.
std::vector<Island> islands_of(const Graph& graph, const std::vector<Measured>& measured, Run run) {
    std::vector<Island> islands;
    for (std::vector<std::size_t>& boxes : pieces(graph)) {
        islands.push_back(island(graph, measured, std::move(boxes), run));
    }
    if (!graph.numbered) {
        std::stable_sort(islands.begin(), islands.end(), [](const Island& a, const Island& b) {
            return a.placed.size.height > b.placed.size.height + 0.001;
        });
    }
    return islands;
}

double paint_heading(Scene& scene, const Graph& graph, const Arrangement& arranged, double width) {
    const double margin = arranged.margin;
    double y = margin + (arranged.headed ? 4.4 : 2);
    if (arranged.headed) {
        for (const std::string& line : wrapped(graph.title, width, 5, true)) {
            add(scene, Text{{margin, y}, line, 5, Align::left, true, Ink::black, false, true});
            y += 6;
        }
    }
    for (const std::string& line : wrapped(graph.legend, width, line_size)) {
        add(scene, Text{{margin, y}, line, line_size});
        y += line_size * 1.4;
    }
    return y + 2;
}

double paint_apart(Scene& scene, const Graph& graph, Point at, double width) {
    double y = at.y;
    for (const std::string& sentence : graph.apart) {
        for (const std::string& line : wrapped(sentence, width, line_size)) {
            y += line_size * 1.4;
            add(scene, Text{{at.x, y}, line, line_size});
        }
    }
    return y;
}

Scene arranged_scene(const Graph& graph, const Arrangement& arranged) {
    const double margin = arranged.margin;
    std::vector<Measured> measured;
    for (const Box& box : graph.boxes) {
        measured.push_back(measure(box, arranged));
    }
    const std::vector<Island> islands = islands_of(graph, measured, arranged.run);
    double width = arranged.width;
    for (const Island& island : islands) {
        width = std::max(width, island.placed.size.width);
    }
    Scene scene;
    scene.title = graph.title;
    scene.alternative_text = graph.alternative_text;
    scene.width = width + 2 * margin;
    Point at{margin, paint_heading(scene, graph, arranged, width)};
    double row = 0;
    for (const Island& island : islands) {
        const Size size = island.placed.size;
        if (at.x > margin && at.x + size.width > margin + width + 0.001) {
            at = {margin, at.y + row + part_gap};
            row = 0;
        }
        paint_island(scene, graph, measured, island, at);
        at.x += size.width + part_gap;
        row = std::max(row, size.height);
    }
    const double foot = paint_apart(scene, graph, {margin, at.y + row + 2}, width);
    scene.height = foot + margin;
    return scene;
}

// By how much it is made smaller to go onto a page: 1 when it fits as it is. An A4 sheet of 210 mm
// x 297 mm less margins, furniture and the figure's title.
double scale_on_page(const Scene& scene) {
    constexpr Size room{page_width, 220};
    return std::min({1.0, room.width / scene.width, room.height / scene.height});
}

} // namespace

Scene scene_of(const Graph& graph) { return arranged_scene(graph, {}); }

Scene scene_for_page(const Graph& graph) {
    constexpr double legible = 2 / line_size;
    constexpr double edge = 0.5; // for the heaviest line
    constexpr double body = page_width - 2 * edge;
    constexpr std::array arrangements{
        Arrangement{Run::rightwards, 46, false, false, edge, body},
        Arrangement{Run::downwards, 46, false, false, edge, body},
        Arrangement{Run::downwards, 30, false, false, edge, body},
        Arrangement{Run::rightwards, 30, true, false, edge, body},
        Arrangement{Run::downwards, 24, true, false, edge, body},
    };
    Scene best;
    for (const Arrangement& arranged : arrangements) {
        Scene scene = arranged_scene(graph, arranged);
        if (best.shapes.empty() || scale_on_page(scene) > scale_on_page(best)) {
            best = std::move(scene);
        }
        if (scale_on_page(best) >= legible) {
            break;
        }
    }
    return best;
}

} // namespace matchmark::draw
