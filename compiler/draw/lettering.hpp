// Letters on a drawing: how wide words are, where they break, and how they come onto paper.
#pragma once

#include "draw/scene.hpp"

#include <string>
#include <vector>

struct _cairo; // cairo_t by its own name; NOLINT(bugprone-reserved-identifier)

namespace matchmark::draw {

// Metric-compatible with what most systems substitute, so an SVG keeps its widths elsewhere.
constexpr const char* font_family = "Liberation Sans";

// In mm. Control characters and line ends count as spaces.
double text_width(const std::string& words, double size, bool bold = false);

struct Lines {
    std::vector<std::string> words;
    double width = 0; // of the widest, in mm
};

// As `wrapped`, with how wide the lines came out.
Lines set_in_lines(const std::string& words, double width, double size, bool bold,
                   std::size_t most_lines);

// Lines no wider than `width` mm, broken at spaces and, where a word alone is wider, inside it.
// At most `most_lines`: the last one then ends in an ellipsis.
std::vector<std::string> wrapped(const std::string& words, double width, double size,
                                 bool bold = false, std::size_t most_lines = 1000);

// Paints with the ink set on the surface, whose unit is the millimetre.
void write_text(_cairo* cairo, const Text& text);

// What may stand in a line of text: no control characters, valid UTF-8.
std::string printable(const std::string& words);

} // namespace matchmark::draw
