// Lying bars that compare a count or a time over many things.
#pragma once

#include "draw/scene.hpp"

#include <string>
#include <vector>

namespace matchmark::draw {

struct Bar {
    std::string label;
    double first = 0;  // drawn full
    double second = 0; // drawn as an outline, behind the first
    std::string value; // what stands at its end
};

struct BarChart {
    std::string title;
    std::string first;  // what a full bar means; said in a line below the title
    std::string second; // what an outline means; empty: there is none
    std::vector<Bar> bars;
};

// As wide as a page has room for. A chart that would be higher than a page goes on over further
// ones; none for a chart without bars. The value of each bar stands beside it in figures, and the
// alternative text holds them all.
std::vector<Scene> bar_charts(const BarChart& chart);

} // namespace matchmark::draw
