// Drawings (SVG) on paper. The one door to librsvg, which is loaded with the first drawing: loading
// it takes as long as checking a guide, and few guides have a drawing to print.
#pragma once

#include "publish/paper/piece.hpp"

#include <cairo.h>
#include <memory>
#include <string>

namespace matchmark::publish {

// The drawing, read; null when it cannot be, or when librsvg is not installed. `bytes` come without
// what could run or fetch.
std::shared_ptr<void> read_drawing(const std::string& bytes);

// Paints what `read_drawing` gave into the place of the piece.
void paint_drawing(cairo_t* paper, void* drawing, const PicturePiece& piece);

} // namespace matchmark::publish
