// The safety alert symbol and safety signs, painted.
#pragma once

#include "guide/document.hpp"

#include <cairo.h>

namespace matchmark::publish {

// A triangle with a stroke and a dot; black, or white on black ground.
void paint_alert(cairo_t* paper, double x, double y, double height, bool light);

// In a square. Triangle: warning; disc: you must; ring with a bar: you must not (ISO 3864-1). The
// shape says it where the colour is lost.
void paint_sign(cairo_t* paper, const guide::Sign& sign, double x, double y, double side);

} // namespace matchmark::publish
