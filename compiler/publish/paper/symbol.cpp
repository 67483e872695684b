// The safety alert symbol and safety signs, painted.
//
// Colours near RAL 1003, 5005 and 3001, from memory, as on the page of HTML.
#include "publish/paper/symbol.hpp"

#include <array>
#include <charconv>
#include <cmath>
#include <numbers>
#include <optional>
#include <string_view>

namespace matchmark::publish {

namespace {

constexpr double full_turn = 2 * std::numbers::pi;

void disc(cairo_t* paper, double x, double y, double radius) {
    cairo_new_sub_path(paper);
    cairo_arc(paper, x, y, radius, 0, full_turn);
    cairo_close_path(paper);
}

void triangle(cairo_t* paper, double left, double top, double right, double bottom) {
    cairo_move_to(paper, (left + right) / 2, top);
    cairo_line_to(paper, right, bottom);
    cairo_line_to(paper, left, bottom);
    cairo_close_path(paper);
}

// The next number of path data, after blanks and commas.
std::optional<double> next_number(std::string_view& data) {
    const auto begin = data.find_first_not_of(" ,\t\r\n");
    if (begin == std::string_view::npos) {
        return std::nullopt;
    }
    data.remove_prefix(begin);
    double number = 0;
    const auto read = std::from_chars(data.data(), data.data() + data.size(), number);
    if (read.ec != std::errc{} || !std::isfinite(number)) {
        return std::nullopt;
    }
    data.remove_prefix(static_cast<std::size_t>(read.ptr - data.data()));
    return number;
}

// Path data of SVG 1.1, 8.3, with the commands M, L, C and Z alone; it ends at the first thing that
// is none of these.
void outline(cairo_t* paper, std::string_view data) {
    char command = 0;
    for (;;) {
        const auto begin = data.find_first_not_of(" ,\t\r\n");
        if (begin == std::string_view::npos) {
            return;
        }
        data.remove_prefix(begin);
        const char c = data.front();
        if (c == 'M' || c == 'L' || c == 'C' || c == 'Z') {
            data.remove_prefix(1);
            command = c;
            if (c == 'Z') {
                cairo_close_path(paper);
                continue;
            }
        }
        std::array<double, 6> at{};
        const std::size_t wanted = command == 'C' ? 6 : command == 'M' || command == 'L' ? 2 : 0;
        for (std::size_t i = 0; i < wanted; ++i) {
            const auto number = next_number(data);
            if (!number) {
                return;
            }
            at[i] = *number;
        }
        if (wanted == 0) {
            return;
        }
        if (command == 'C') {
            cairo_curve_to(paper, at[0], at[1], at[2], at[3], at[4], at[5]);
        } else if (command == 'L') {
            cairo_line_to(paper, at[0], at[1]);
        } else {
            cairo_move_to(paper, at[0], at[1]);
            command = 'L';
        }
    }
}

// The symbol's square of 100, with its corner at (x, y) of the sign's.
void symbol(cairo_t* paper, const guide::Sign& sign, double x, double y, double scale) {
    cairo_save(paper);
    cairo_translate(paper, x, y);
    cairo_scale(paper, scale, scale);
    cairo_new_path(paper);
    outline(paper, sign.outline);
    cairo_fill(paper);
    cairo_restore(paper);
}

void paint_warning(cairo_t* paper, const guide::Sign& sign) {
    triangle(paper, 4, 8, 96, 88);
    cairo_set_source_rgb(paper, 0xf9 / 255.0, 0xa9 / 255.0, 0);
    cairo_fill_preserve(paper);
    cairo_set_source_rgb(paper, 0, 0, 0);
    cairo_set_line_width(paper, 7);
    cairo_stroke(paper);
    symbol(paper, sign, 27.5, 36, 0.45);
}

void paint_order(cairo_t* paper, const guide::Sign& sign) {
    disc(paper, 50, 50, 48);
    cairo_set_source_rgb(paper, 0, 0x53 / 255.0, 0x87 / 255.0);
    cairo_fill(paper);
    cairo_set_source_rgb(paper, 1, 1, 1);
    symbol(paper, sign, 17, 17, 0.66);
}

void paint_ban(cairo_t* paper, const guide::Sign& sign) {
    disc(paper, 50, 50, 48);
    cairo_set_source_rgb(paper, 1, 1, 1);
    cairo_fill(paper);
    cairo_set_source_rgb(paper, 0, 0, 0);
    symbol(paper, sign, 21, 21, 0.58);
    cairo_set_source_rgb(paper, 0x9b / 255.0, 0x24 / 255.0, 0x23 / 255.0);
    cairo_move_to(paper, 21, 21);
    cairo_line_to(paper, 79, 79);
    cairo_set_line_width(paper, 9);
    cairo_stroke(paper);
    disc(paper, 50, 50, 43);
    cairo_set_line_width(paper, 10);
    cairo_stroke(paper);
}

} // namespace

void paint_alert(cairo_t* paper, double x, double y, double height, bool light) {
    cairo_save(paper);
    cairo_translate(paper, x, y);
    cairo_scale(paper, height / 28, height / 28);
    const double ink = light ? 1 : 0;
    cairo_set_source_rgb(paper, ink, ink, ink);
    cairo_set_line_width(paper, 3);
    cairo_set_line_join(paper, CAIRO_LINE_JOIN_ROUND);
    cairo_set_line_cap(paper, CAIRO_LINE_CAP_ROUND);
    triangle(paper, 2, 2.5, 29, 25.5);
    cairo_stroke(paper);
    cairo_move_to(paper, 15.5, 10);
    cairo_line_to(paper, 15.5, 17.2);
    cairo_stroke(paper);
    disc(paper, 15.5, 21.6, 1.8);
    cairo_fill(paper);
    cairo_restore(paper);
}

void paint_sign(cairo_t* paper, const guide::Sign& sign, double x, double y, double side) {
    cairo_save(paper);
    cairo_translate(paper, x, y);
    cairo_scale(paper, side / 100, side / 100);
    cairo_set_line_join(paper, CAIRO_LINE_JOIN_ROUND);
    cairo_set_line_cap(paper, CAIRO_LINE_CAP_BUTT);
    cairo_new_path(paper);
    switch (sign.form) {
    case guide::SignForm::obliges:
        paint_order(paper, sign);
        break;
    case guide::SignForm::forbids:
        paint_ban(paper, sign);
        break;
    case guide::SignForm::warns:
        paint_warning(paper, sign);
        break;
    }
    cairo_restore(paper);
}

} // namespace matchmark::publish
