// Gives boxes of a known size their places, so that arrows run one way and cross seldom.
#pragma once

#include "draw/scene.hpp"

#include <string>
#include <utility>
#include <vector>

namespace matchmark::draw {

struct Size {
    double width = 0;
    double height = 0;
};

// A line between two boxes: `curve` has a start and three points for each piece of it.
struct Route {
    std::vector<Point> curve;
};

struct Placement {
    Size size;                  // of the whole
    std::vector<Point> centres; // of the boxes, in their order
    std::vector<Route> routes;  // of the pairs, in their order
};

// Which way the arrows run.
enum class Run : unsigned char { rightwards, downwards };

// All in mm. `pairs`: indices of boxes, from and to. One at a time in a process: the layout library
// keeps state of its own.
Placement lay_out(const std::vector<Size>& boxes,
                  const std::vector<std::pair<std::size_t, std::size_t>>& pairs, Run run);

} // namespace matchmark::draw
