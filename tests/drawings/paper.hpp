// A device of a few parts with a large face, and the lines of a PDF in its own coordinates.
#pragma once

#include "drive/compilation.hpp"

#include <string>
#include <vector>

namespace matchmark::test {

// The file's compilation; its findings must hold no error.
drive::Compilation compiled(const std::string& text);

// A tray of 320 x 210 mm under ten screws of three sizes, wired, with a part inside another.
std::string tray_device();
std::string tray_guide();

// One straight line of a page, from the top left, in mm of paper.
struct PdfLine {
    unsigned page = 0; // from 0
    double x1 = 0, y1 = 0, x2 = 0, y2 = 0;
    double width = 0; // of its pen, in mm
};

struct PdfBox {
    unsigned page = 0;
    double x = 0, y = 0, width = 0, height = 0;
};

struct PdfMarks {
    std::vector<PdfLine> lines;
    std::vector<PdfBox> boxes; // upright rectangles
};

// Reads the uncompressed content by qpdf.
PdfMarks marks_of(const std::string& pdf);

// What `line` prints as a shell runs it, with `bytes` in the file that `{}` in it stands for.
std::string ran(const std::string& line, const std::string& bytes);

} // namespace matchmark::test
