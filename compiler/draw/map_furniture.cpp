// What stands on every sheet of a fastener map round the map itself.
#include "draw/map_furniture.hpp"

#include "draw/lettering.hpp"
#include "language/words.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::draw {

using language::Language;

namespace {

constexpr double edge = 10; // most printers leave less than this blank: common practice, no source
constexpr double head_height = 16;
constexpr double band = check_square + 6;
constexpr double letters = 2.6;

struct PaperSize {
    double width = 0;
    double height = 0;
};

// ISO 216, and ANSI/ASME Y14.1 for Letter.
PaperSize size_of(Paper paper) {
    return paper == Paper::a4 ? PaperSize{210, 297} : PaperSize{215.9, 279.4};
}

// The furniture below the map, or at its right.
Layout layout(PaperSize paper, bool below) {
    Layout made;
    made.paper_width = paper.width;
    made.paper_height = paper.height;
    made.corner = {edge, edge + head_height};
    made.width = paper.width - 2 * edge - (below ? 0 : band);
    made.height = paper.height - 2 * edge - head_height - (below ? band : 0);
    made.foot = below ? Point{edge, paper.height - edge - check_square}
                      : Point{paper.width - edge - check_square, edge + head_height};
    made.is_upright = below;
    return made;
}

double add_lines(Scene& scene, Point at, double width, const std::vector<std::string>& notes) {
    for (const std::string& note : notes) {
        for (const std::string& line : wrapped(note, width, letters)) {
            add(scene, Text{at, line, letters});
            at.y += letters * 1.35;
        }
        at.y += 0.8;
    }
    return at.y;
}

// A tick every 10 mm, numbers at every 50.
void add_scale_bar(Scene& scene, Point from, int length) {
    const Point to{from.x + length, from.y};
    add(scene, Line{from, to, {0.35}});
    for (int mm = 0; mm <= length; mm += 10) {
        const bool long_tick = mm % 50 == 0;
        const double x = from.x + mm;
        add(scene, Line{{x, from.y}, {x, from.y - (long_tick ? 3.0 : 1.8)}, {usual}});
        if (long_tick) {
            const std::string words = mm == 0 ? "0" : fmt::format("{} mm", mm);
            const Align align = mm == 0 ? Align::left : mm == length ? Align::right : Align::middle;
            add(scene, Text{{x, from.y + 3.6}, words, letters, align});
        }
    }
}

Point notes_place(const Layout& layout) {
    return layout.is_upright ? Point{layout.foot.x + check_square + 8, layout.foot.y + 16}
                             : Point{layout.foot.x, layout.foot.y + check_square + 20};
}

constexpr double notes_width_upright = 96;

} // namespace

std::vector<Layout> layouts(Paper paper) {
    const PaperSize size = size_of(paper);
    const PaperSize on_its_side{size.height, size.width};
    return {layout(size, true), layout(on_its_side, false), layout(size, false)};
}

void add_head(const Language& in, Scene& scene, const Layout& layout, const SheetHead& head) {
    const double width = layout.paper_width - 2 * edge;
    const std::string number =
        head.sheets > 1 ? language::fill_text(language::text(in, "Sheet {sheet} of {sheets}"),
                                              {{"sheet", std::to_string(head.sheet)},
                                               {"sheets", std::to_string(head.sheets)}})
                        : "";
    const double room = width - text_width(number, 4, true) - 4;
    const auto title = wrapped(head.title, room, 4.6, true, 1);
    add(scene, Text{{edge, edge + 4.2},
                    title.empty() ? "" : title.front(),
                    4.6,
                    Align::left,
                    true,
                    Ink::black,
                    false,
                    true});
    add(scene, Text{{edge + width, edge + 4.2}, number, 4, Align::right, true});
    const auto place =
        wrapped(head.place + ". " + language::text(in, "Scale 1:1, seen from outside."), width, 3,
                false, 1);
    add(scene, Text{{edge, edge + 9}, place.empty() ? "" : place.front(), 3});
    add(scene, Line{{edge, edge + 11.5}, {edge + width, edge + 11.5}, {0.35}});
}

void add_foot(const Language& in, Scene& scene, const Layout& layout) {
    const Point square = layout.foot;
    add(scene, Rectangle{square, check_square, check_square, 0, Stroke{0.35}, std::nullopt});
    add_lines(scene, {square.x + 4, square.y + 8}, check_square - 8,
              {language::text(in, "Check square"),
               language::text(in, "Measure it: 50 mm each way. If it is not, print again at 100 %, "
                                  "without fitting to the page.")});
    const Point bar = layout.is_upright ? Point{square.x + check_square + 8, square.y + 4}
                                        : Point{square.x, square.y + check_square + 8};
    add_scale_bar(scene, bar, layout.is_upright ? 100 : 50);
    add_lines(
        scene, notes_place(layout), layout.is_upright ? notes_width_upright : check_square,
        {language::text(
             in, "Number in the mark: the fastener, as in the key. Small number: which one of its "
                 "kind."),
         language::text(
             in, "A mark with corners: another fastener differs from it in size alone, and has "
                 "another mark."),
         language::text(in, "Head in broken line: its size is not known. Grey head: stays in.")});
}

void add_locator(Scene& scene, const Layout& layout, const Tile& tile) {
    const Point notes = notes_place(layout);
    const double cell = std::min(7.0, 26.0 / std::max(tile.across, tile.down));
    const Point corner = layout.is_upright
                             ? Point{layout.paper_width - edge - cell * tile.across, notes.y - 2}
                             : Point{notes.x, notes.y + 40};
    for (unsigned row = 0; row < tile.down; ++row) {
        for (unsigned column = 0; column < tile.across; ++column) {
            const bool here = row == tile.row && column == tile.column;
            const Point at{corner.x + cell * column, corner.y + cell * row};
            add(scene, Rectangle{at, cell, cell, 0, Stroke{here ? wide : thin},
                                 here ? Ink::pale : Ink::white});
            add(scene, Text{{at.x + cell / 2, at.y + cell * 0.66},
                            std::to_string(row * tile.across + column + 1),
                            cell * 0.45,
                            Align::middle,
                            here});
        }
    }
}

} // namespace matchmark::draw
