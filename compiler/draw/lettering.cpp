// Letters on a drawing: how wide words are, where they break, and how they come onto paper. Pango
// enters here and nowhere else in this room.
#include "draw/lettering.hpp"

#include <pango/pangocairo.h>

#include <algorithm>
#include <memory>

namespace matchmark::draw {

namespace {

struct Unref {
    void operator()(gpointer object) const { g_object_unref(object); }
};
struct FreeFont {
    void operator()(PangoFontDescription* font) const { pango_font_description_free(font); }
};
using PangoLine = std::unique_ptr<PangoLayout, Unref>;

// A font is laid out a hundred times larger than it is drawn, so that widths in whole Pango units
// and hinting do not round what is 3 mm high.
constexpr double magnified = 100;

using Context = std::unique_ptr<PangoContext, Unref>;

Context new_context() {
    Context context{pango_font_map_create_context(pango_cairo_font_map_get_default())};
    pango_cairo_context_set_resolution(context.get(), 72); // a unit of the font is a unit of paper
    cairo_font_options_t* options = cairo_font_options_create();
    cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    pango_cairo_context_set_font_options(context.get(), options);
    cairo_font_options_destroy(options);
    return context;
}

PangoLine layout_of(const std::string& words, double size, bool bold) {
    // Never changed once it is made; a new one for each word would look for its fonts anew. Pango
    // keeps its fonts by thread.
    thread_local const Context context = new_context();
    const std::unique_ptr<PangoFontDescription, FreeFont> font{pango_font_description_new()};
    pango_font_description_set_family(font.get(), font_family);
    pango_font_description_set_weight(font.get(), bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
    pango_font_description_set_absolute_size(font.get(), size * magnified * PANGO_SCALE);
    PangoLine layout{pango_layout_new(context.get())};
    pango_layout_set_font_description(layout.get(), font.get());
    pango_layout_set_single_paragraph_mode(layout.get(), TRUE);
    const std::string shown = printable(words);
    pango_layout_set_text(layout.get(), shown.data(), static_cast<int>(shown.size()));
    return layout;
}

double width_of(PangoLayout* layout) {
    PangoRectangle logical{};
    pango_layout_get_extents(layout, nullptr, &logical);
    return logical.width / (PANGO_SCALE * magnified);
}

} // namespace

std::string printable(const std::string& words) {
    std::string text;
    gchar* valid = g_utf8_make_valid(words.data(), static_cast<gssize>(words.size()));
    for (const gchar* at = valid; *at != '\0'; at = g_utf8_next_char(at)) {
        const gunichar letter = g_utf8_get_char(at);
        const bool control = letter < 0x20 || (letter >= 0x7f && letter < 0xa0);
        const bool turns = (letter >= 0x202a && letter <= 0x202e) ||
                           (letter >= 0x2066 && letter <= 0x2069); // would reorder what follows
        if (control || turns || letter == 0xfffe || letter == 0xffff) {
            text += ' ';
        } else {
            text.append(at, static_cast<const gchar*>(g_utf8_next_char(at)));
        }
    }
    g_free(valid);
    return text;
}

double text_width(const std::string& words, double size, bool bold) {
    return width_of(layout_of(words, size, bold).get());
}

Lines set_in_lines(const std::string& words, double width, double size, bool bold,
                   std::size_t most_lines) {
    const PangoLine layout = layout_of(words, size, bold);
    pango_layout_set_width(layout.get(), static_cast<int>(width * magnified * PANGO_SCALE));
    pango_layout_set_wrap(layout.get(), PANGO_WRAP_WORD_CHAR);
    const std::string text = pango_layout_get_text(layout.get());
    const auto count = static_cast<std::size_t>(pango_layout_get_line_count(layout.get()));
    Lines lines;
    for (std::size_t i = 0; i < count && lines.words.size() < most_lines; ++i) {
        PangoLayoutLine* line = pango_layout_get_line_readonly(layout.get(), static_cast<int>(i));
        std::string piece = text.substr(static_cast<std::size_t>(line->start_index),
                                        static_cast<std::size_t>(line->length));
        while (piece.ends_with(' ')) {
            piece.pop_back();
        }
        PangoRectangle logical{};
        pango_layout_line_get_extents(line, nullptr, &logical);
        lines.width = std::max(lines.width, logical.width / (PANGO_SCALE * magnified));
        lines.words.push_back(std::move(piece));
    }
    if (count > most_lines && !lines.words.empty()) {
        lines.words.back() += "…";
        lines.width = std::max(lines.width, text_width(lines.words.back(), size, bold));
    }
    return lines;
}

std::vector<std::string> wrapped(const std::string& words, double width, double size, bool bold,
                                 std::size_t most_lines) {
    return set_in_lines(words, width, size, bold, most_lines).words;
}

void write_text(_cairo* cairo, const Text& text) {
    const PangoLine layout = layout_of(text.words, text.size, text.bold);
    const double width = width_of(layout.get());
    const double baseline = pango_layout_get_baseline(layout.get()) / double{PANGO_SCALE};
    cairo_save(cairo);
    cairo_translate(cairo, text.at.x, text.at.y);
    if (text.upwards) {
        cairo_rotate(cairo, -1.57079632679489661923);
    }
    const double share = text.align == Align::left ? 0 : text.align == Align::middle ? 0.5 : 1;
    cairo_translate(cairo, -share * width, 0);
    cairo_scale(cairo, 1 / magnified, 1 / magnified);
    cairo_move_to(cairo, 0, -baseline);
    pango_cairo_show_layout(cairo, layout.get());
    cairo_restore(cairo);
}

} // namespace matchmark::draw
