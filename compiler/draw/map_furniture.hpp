// What stands on every sheet of a fastener map round the map itself: the head, the check square,
// the scale bar, what the marks mean, and which part of the face the sheet shows.
#pragma once

#include "draw/fastener_map.hpp"

#include <string>
#include <vector>

namespace matchmark::draw {

// A sheet, and what of it is free for the map. All in mm.
struct Layout {
    double paper_width = 0;
    double paper_height = 0;
    Point corner; // top left of what is free
    double width = 0;
    double height = 0;
    Point foot;              // top left of the check square
    bool is_upright = false; // the rest of the furniture stands beside the square, else below it
};

// The upright sheet first: the map above its furniture. Then the sheet on its side, and upright
// again, the furniture at the right.
std::vector<Layout> layouts(Paper paper);

struct SheetHead {
    std::string title;
    std::string place;
    unsigned sheet = 1;
    unsigned sheets = 1;
};
void add_head(const language::Language& in, Scene& scene, const Layout& layout,
              const SheetHead& head);

// The check square, the scale bar and what the marks mean.
void add_foot(const language::Language& in, Scene& scene, const Layout& layout);
constexpr double check_square = 50;

struct Tile {
    unsigned across = 1;
    unsigned down = 1;
    unsigned column = 0;
    unsigned row = 0;
};
void add_locator(Scene& scene, const Layout& layout, const Tile& tile);

} // namespace matchmark::draw
