// Text set in lines, ready to be measured and painted. The door of this room to Pango.
#pragma once

#include "publish/paper/text.hpp"

#include <cairo.h>
#include <map>
#include <memory>
#include <pango/pango.h>
#include <string>
#include <vector>

namespace matchmark::publish {

enum class Align : unsigned char { left, centre, right };

struct Type {
    double size = 10.5; // points
    bool bold = false;
    bool italic = false;
    bool fixed = false;
    Align align = Align::left;
    bool one_line = false; // cut with three dots where it is longer
};

// What stands in a frame or a ring, or leads somewhere: the words of it within the text.
struct Setting {
    std::shared_ptr<PangoLayout> layout;
    std::vector<Stretch> framed;
    std::vector<Leading> leadings;
    int lines = 0;
    double width = 0; // of the longest line
    double height = 0;
};

// Holds what all settings share; made once for a document.
struct Setter {
    std::shared_ptr<PangoContext> context;
    // A guide says much twice, on the way in and on the way back: it is set once.
    std::shared_ptr<std::map<std::string, std::shared_ptr<const Setting>>> known;
};

// Measures in points, whatever the screen is.
Setter setter_for(cairo_t* paper, const std::string& tag = "en");

// In lines of at most `width` points. A word that is longer is broken.
std::shared_ptr<const Setting> set_text(const Setter& setter, const Rich& rich, const Type& type,
                                        double width);

// The height of the lines from `first` up to `last`, without that of `last`.
double height_of(const Setting& setting, int first, int last);

// A piece of a line, seen from the top left of the text's first line.
struct Area {
    int line = 0;
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;
};

// The areas of a range of bytes, one for each piece of a line.
std::vector<Area> areas_of(const Setting& setting, std::size_t begin, std::size_t end);

// Paints the lines with the top left of line `first` at (x, y).
void paint_lines(cairo_t* paper, const Setting& setting, int first, int last, double x, double y);

} // namespace matchmark::publish
