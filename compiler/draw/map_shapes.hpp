// What is drawn on the sheets of a fastener map: heads, balloons, the face, the key.
#pragma once

#include "draw/map_balloons.hpp"

namespace matchmark::draw {

// The number in its ring, square, triangle, diamond or hexagon.
void add_mark(std::vector<Shape>& shapes, Point centre, const MapGroup& group);

// The face's outline, its fasteners and their balloons, with the face's top left at `origin`.
std::vector<Shape> face_shapes(const FaceMap& map, const std::vector<Balloon>& balloons,
                               Point origin);

// Two dashes that cross, through the point.
void add_cross(std::vector<Shape>& shapes, Point at, double half, Stroke stroke);

// The rows of the key, as one table or, when it is higher than `room` mm, as several. Each has its
// top left at `origin`.
struct KeyTable {
    std::vector<Shape> shapes;
    double height = 0;
};
std::vector<KeyTable> key_tables(const language::Language& in, const model::Model& model,
                                 const FaceMap& map, Point origin, double width, double room);

} // namespace matchmark::draw
