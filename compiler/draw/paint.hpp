// From a drawing to bytes: SVG for a page, PDF for paper.
#pragma once

#include "draw/scene.hpp"

#include <string>
#include <vector>

struct _cairo; // cairo_t by its own name; NOLINT(bugprone-reserved-identifier)

namespace matchmark::draw {

// One unit of the SVG is one millimetre. Text stays text; no script, no style, no link, no id, so
// that many stand in one page. Numbers have three decimals at most.
std::string paint_svg(const Scene& scene);

struct PdfNotes {
    std::string title;
    std::string author;
    std::string created; // "2024-03-01" or "2024-03-01T10:00:00Z"; without a day: 1970-01-01
};

// One page for each scene, at its size; 1 mm is 72/25.4 of the PDF's units. Fonts are embedded.
std::string paint_pdf(const std::vector<Scene>& scenes, const PdfNotes& notes);

// Onto a sheet that is there already: the top left corner at the origin, a unit for each
// millimetre. Without structure of its own.
void paint_on(_cairo* paper, const Scene& scene);

// The lengths of dashes and gaps in mm, for a line of this width.
std::vector<double> dashes(const Stroke& stroke);
// 0 black to 1 white.
double brightness(Ink ink);

} // namespace matchmark::draw
