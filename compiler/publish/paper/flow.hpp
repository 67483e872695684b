// Boxes one below another, and their distribution over pages.
#pragma once

#include "publish/paper/piece.hpp"

namespace matchmark::publish {

// Gathers boxes, top to bottom.
struct Flow {
    Setter setter;
    double left = 0; // of the column that texts now stand in
    double width = 0;
    std::vector<Box> boxes = {};
    double gap = 0; // above the next box
    unsigned outer = 0;
    unsigned inner = 0;
    unsigned last_group = 0;
    std::vector<const char*> opens = {};
};

Box& add_box(Flow& flow, double height);

// The gap above it becomes part of it, so that a frame can go round it.
void absorb_gap(Box& box);

// At least this much space above the next box.
void leave(Flow& flow, double gap);

// What follows, up to the matching `close`, is one element of the structure.
void open(Flow& flow, const char* tag);
void close(Flow& flow);

// Boxes from here on belong together, up to the matching `end`.
void begin_outer(Flow& flow);
void end_outer(Flow& flow);
void begin_inner(Flow& flow);
void end_inner(Flow& flow);

// A text in the column. A long one may be broken between its lines, never leaving fewer than three
// alone. Gives the index of its first box.
std::size_t add_text(Flow& flow, const Rich& rich, const Type& type, const char* tag = "P");
std::size_t add_text(Flow& flow, std::string_view words, const Type& type, const char* tag = "P");

// A text to place by hand.
Letters letters(const Flow& flow, const Rich& rich, const Type& type, double x, double y,
                double width, const char* tag = nullptr);
Letters letters(const Flow& flow, std::string_view words, const Type& type, double x, double y,
                double width, const char* tag = nullptr);

struct Placed {
    const Box* box = nullptr;
    double y = 0;          // of its top, from the top of the page's room
    bool repeated = false; // a table's head once more
    double scale = 1;      // less than 1 for what is higher than a page
};
using Page = std::vector<Placed>;

std::vector<Page> pages_of(const std::vector<Box>& boxes, double room);

} // namespace matchmark::publish
