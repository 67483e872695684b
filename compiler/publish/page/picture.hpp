// A picture with numbered balloons on it and the key beside it, as on an assembly drawing.
#pragma once

#include "publish/shown_picture.hpp"

namespace matchmark::publish {

// Where a balloon stands, seen from the point that it names; in pixels, y downwards.
struct Offset {
    int x = 0;
    int y = 0;
};

// One for each point: outwards from the middle where there is room, and clear of other points and
// balloons. Worked out for the smallest picture that a page shows; on a larger one everything is
// farther apart.
// `shape`: width divided by height; 0 when it is not known.
std::vector<Offset> balloon_offsets(const std::vector<model::Point>& points, double shape);

std::string figure(const guide::Picture& picture, const ShownPictures& pictures,
                   const language::Language& in = language::english());

} // namespace matchmark::publish
