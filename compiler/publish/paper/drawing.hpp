// The compiler's own drawings on paper. Another room paints them, straight onto the paper: it
// knows the lines and letters of which the document holds only the finished SVG.
#pragma once

#include <cairo.h>
#include <cstddef>
#include <functional>
#include <string>

namespace matchmark::publish {

// Paints the document's figure of that index, its top left corner at the origin, a unit for each
// millimetre. Black is set; what it sets itself it need not put back.
using FigurePainter = std::function<void(cairo_t* paper, std::size_t figure)>;

// One of them in its place. The painter outlives it.
struct DrawingPiece {
    const FigurePainter* painter = nullptr;
    std::size_t figure = 0;
    double x = 0;
    double y = 0;
    double width = 0; // in points, as it is painted, before it is turned
    double scale = 1; // to its natural size
    std::string words;
    bool sideways = false; // turned so that its top is at the left
};

} // namespace matchmark::publish
