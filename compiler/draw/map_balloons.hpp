// Where the balloons of a fastener map stand: near their fastener, over nothing else.
#pragma once

#include "draw/map_groups.hpp"

#include <vector>

namespace matchmark::draw {

constexpr double balloon_radius = 3.3; // in mm, of the ring
constexpr double least_head = 3;       // a head whose size is not known is drawn of this diameter

struct Balloon {
    std::size_t group = 0;
    std::size_t place = 0;
    Point centre; // on the face, in mm
};

// What is drawn of the group's head, in mm.
double head_radius(const MapGroup& group);

// How near the point comes to the line round the face, inside or outside.
double distance_to_outline(const model::Face& face, Point p);

// One for each place that the guide undoes, none further than `reach` from its fastener's middle.
std::vector<Balloon> balloons_of(const FaceMap& map);
constexpr double reach = 20;

} // namespace matchmark::draw
