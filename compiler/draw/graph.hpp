// Boxes and what leads from one to another, before they have a place.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace matchmark::draw {

enum class Emphasis : unsigned char { quiet, plain, strong };

enum class BoxForm : unsigned char {
    part,   // sharp corners
    tie,    // round ends: what holds two parts together
    source, // a double outline: what may be live
};

struct Box {
    std::string title;
    std::vector<std::string> lines; // what stands below the title, smaller
    BoxForm form = BoxForm::part;
    Emphasis emphasis = Emphasis::plain;
};

struct Link {
    std::size_t from = 0; // index into the boxes
    std::size_t to = 0;
    Emphasis emphasis = Emphasis::plain;
    bool arrow = true;        // leads one way
    bool one_of_ways = false; // another will do in its place
    friend bool operator==(const Link&, const Link&) = default;
};

struct Graph {
    std::string title;
    std::string legend; // one line below the title: how to read it
    std::vector<Box> boxes;
    std::vector<Link> links;
    bool numbered = false;          // boxes stand in the order in which they are to be read
    std::vector<std::string> apart; // what has no link, in words, listed at the foot
    std::string alternative_text;
};

// Leaves out the boxes for which `kept` is false, and their links.
void keep_boxes(Graph& graph, const std::vector<bool>& kept);

// Each link once, none from a box to itself.
void tidy_links(Graph& graph);

// Takes away each arrow whose two ends are joined by a longer way as well. Within a ring of arrows
// all of them stay.
void reduce(Graph& graph);

// Groups of boxes that no link joins, in the order of their first box. Boxes without a link are
// groups of one.
std::vector<std::vector<std::size_t>> pieces(const Graph& graph);

} // namespace matchmark::draw
