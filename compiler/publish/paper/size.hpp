// The papers that a guide is printed on.
#pragma once

namespace matchmark::publish {

enum class Paper : unsigned char { a4, letter };

// In points of 1/72 inch. A4: 210 mm x 297 mm (ISO 216). Letter: 8.5 in x 11 in (ANSI Y14.1).
struct PaperSize {
    double width = 0;
    double height = 0;
};

constexpr double points_per_mm = 72 / 25.4;

constexpr PaperSize size_of(Paper paper) {
    if (paper == Paper::letter) {
        return {612, 792};
    }
    return {210 * points_per_mm, 297 * points_per_mm};
}

} // namespace matchmark::publish
