// Photos and drawings on paper, with their balloons.
#pragma once

#include "publish/paper/piece.hpp"

#include <cairo.h>
#include <map>
#include <memory>

namespace matchmark::publish {

// What pictures were read into, each once for a document.
struct Gallery {
    std::map<const ShownPicture*, std::shared_ptr<cairo_surface_t>> photos;
    std::map<const ShownPicture*, std::shared_ptr<void>> drawings;
};

// Whether it can be painted: a whole JPEG (kept as it is), PNG or SVG. Reads it into the gallery.
bool read_picture(Gallery& gallery, const ShownPicture& shown);

// Paints what was read, and the marks of its guide's picture over it.
void paint_picture(cairo_t* paper, const Setter& setter, const Gallery& gallery,
                   const PicturePiece& piece);

// How far the balloons of a picture of that size stand out over its edges.
struct Overhang {
    double left = 0;
    double top = 0;
    double right = 0;
    double bottom = 0;
};
Overhang overhang_of(const guide::Picture& picture, double width, double height);

// The balloon in which the number stands, as in the keys beside pictures.
void paint_ring(cairo_t* paper, double x, double y, double radius, double line);

} // namespace matchmark::publish
