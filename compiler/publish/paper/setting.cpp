// Text set in lines, ready to be measured and painted. The door of this room to Pango.
#include "publish/paper/setting.hpp"

#include <algorithm>
#include <fmt/core.h>
#include <iterator>
#include <pango/pangocairo.h>

namespace matchmark::publish {

namespace {

// Metric-compatible fonts of Debian's fonts-liberation; what they lack comes from whatever is
// there.
constexpr const char* family = "Liberation Sans,DejaVu Sans,sans-serif";
constexpr const char* fixed_family = "Liberation Mono,DejaVu Sans Mono,monospace";
constexpr double line_spacing = 1.08; // times the font's own

double points(int units) { return static_cast<double>(units) / PANGO_SCALE; }

void insert(PangoAttrList* list, PangoAttribute* attribute, const Stretch& stretch) {
    attribute->start_index = static_cast<guint>(stretch.begin);
    attribute->end_index = static_cast<guint>(stretch.end);
    pango_attr_list_insert(list, attribute);
}

void insert_look(PangoAttrList* list, const Stretch& stretch, const Type& type) {
    const Look& look = stretch.look;
    if (look.bold) {
        insert(list, pango_attr_weight_new(PANGO_WEIGHT_BOLD), stretch);
    }
    if (look.italic) {
        insert(list, pango_attr_style_new(PANGO_STYLE_ITALIC), stretch);
    }
    if (look.fixed) {
        insert(list, pango_attr_family_new(fixed_family), stretch);
    }
    if (look.ringed || look.boxed) {
        // Few sizes: each costs a search for its fonts.
        insert(list, pango_attr_size_new((type.size > 10 ? 9 : 8) * PANGO_SCALE), stretch);
    }
    if (look.unbroken || look.ringed || (look.boxed && stretch.end - stretch.begin < 40)) {
        insert(list, pango_attr_allow_breaks_new(FALSE), stretch);
    }
}

struct FreeIterator {
    void operator()(PangoLayoutIter* iterator) const { pango_layout_iter_free(iterator); }
};
using Iterator = std::unique_ptr<PangoLayoutIter, FreeIterator>;

// The line's box: Pango's own of its letters, as high as the space that the line takes.
Area box_of_line(PangoLayoutIter* iterator, int line) {
    PangoRectangle logical;
    int top = 0;
    int bottom = 0;
    pango_layout_iter_get_line_extents(iterator, nullptr, &logical);
    pango_layout_iter_get_line_yrange(iterator, &top, &bottom);
    return {line, points(logical.x), points(top), points(logical.width), points(bottom - top)};
}

double top_of(const Setting& setting, int line) {
    const Iterator iterator(pango_layout_get_iter(setting.layout.get()));
    for (int i = 0; i < line; ++i) {
        if (pango_layout_iter_next_line(iterator.get()) == FALSE) {
            return setting.height;
        }
    }
    return box_of_line(iterator.get(), line).y;
}

} // namespace

Setter setter_for(cairo_t* paper, const std::string& tag) {
    Setter setter{{pango_cairo_create_context(paper), &g_object_unref},
                  std::make_shared<std::map<std::string, std::shared_ptr<const Setting>>>()};
    // Else Pango takes the paper for a screen of 96 dots an inch, and rounds to its dots.
    pango_cairo_context_set_resolution(setter.context.get(), 72);
    const std::unique_ptr<cairo_font_options_t, decltype(&cairo_font_options_destroy)> options(
        cairo_font_options_create(), &cairo_font_options_destroy);
    cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
    pango_cairo_context_set_font_options(setter.context.get(), options.get());
    pango_context_set_round_glyph_positions(setter.context.get(), FALSE);
    // The hyphenation and shaping of the user's locale must not reach the paper.
    pango_context_set_language(setter.context.get(), pango_language_from_string(tag.c_str()));
    return setter;
}

namespace {

// What tells one setting from another.
std::string key_of(const Rich& rich, const Type& type, double width) {
    std::string key = fmt::format("{} {:.2f} {}{}{}{}{}", type.size, width, type.bold, type.italic,
                                  type.fixed, type.one_line, static_cast<int>(type.align));
    for (const Stretch& stretch : rich.stretches) {
        const Look& look = stretch.look;
        fmt::format_to(std::back_inserter(key), " {}-{} {}{}{}{}{}{}", stretch.begin, stretch.end,
                       look.bold, look.italic, look.fixed, look.unbroken, look.ringed, look.boxed);
    }
    for (const Leading& leading : rich.leadings) {
        fmt::format_to(std::back_inserter(key), " {}-{} {} {}", leading.begin, leading.end,
                       leading.address, leading.place);
    }
    return key + "\n" + rich.text;
}

std::shared_ptr<const Setting> set_anew(const Setter& setter, const Rich& rich, const Type& type,
                                        double width) {
    auto setting = std::make_shared<Setting>();
    setting->layout = {pango_layout_new(setter.context.get()), &g_object_unref};
    PangoLayout* layout = setting->layout.get();
    const std::unique_ptr<PangoFontDescription, decltype(&pango_font_description_free)> font(
        pango_font_description_new(), &pango_font_description_free);
    pango_font_description_set_family_static(font.get(), type.fixed ? fixed_family : family);
    pango_font_description_set_size(font.get(), static_cast<int>(type.size * PANGO_SCALE));
    pango_font_description_set_weight(font.get(),
                                      type.bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
    pango_font_description_set_style(font.get(),
                                     type.italic ? PANGO_STYLE_ITALIC : PANGO_STYLE_NORMAL);
    pango_layout_set_font_description(layout, font.get());
    pango_layout_set_width(layout, static_cast<int>(std::max(1.0, width) * PANGO_SCALE));
    pango_layout_set_wrap(layout, PANGO_WRAP_WORD_CHAR);
    pango_layout_set_ellipsize(layout, type.one_line ? PANGO_ELLIPSIZE_END : PANGO_ELLIPSIZE_NONE);
    pango_layout_set_line_spacing(layout, static_cast<float>(line_spacing));
    pango_layout_set_alignment(layout, type.align == Align::left     ? PANGO_ALIGN_LEFT
                                       : type.align == Align::centre ? PANGO_ALIGN_CENTER
                                                                     : PANGO_ALIGN_RIGHT);
    const std::unique_ptr<PangoAttrList, decltype(&pango_attr_list_unref)> attributes(
        pango_attr_list_new(), &pango_attr_list_unref);
    for (const Stretch& stretch : rich.stretches) {
        insert_look(attributes.get(), stretch, type);
        if (stretch.look.ringed || stretch.look.boxed) {
            setting->framed.push_back(stretch);
        }
    }
    pango_layout_set_attributes(layout, attributes.get());
    pango_layout_set_text(layout, rich.text.data(), static_cast<int>(rich.text.size()));
    PangoRectangle logical;
    pango_layout_get_extents(layout, nullptr, &logical);
    setting->leadings = rich.leadings;
    setting->lines = pango_layout_get_line_count(layout);
    setting->width = points(logical.width);
    setting->height = points(logical.height);
    return setting;
}

} // namespace

std::shared_ptr<const Setting> set_text(const Setter& setter, const Rich& rich, const Type& type,
                                        double width) {
    auto& known = (*setter.known)[key_of(rich, type, width)];
    if (known == nullptr) {
        known = set_anew(setter, rich, type, width);
    }
    return known;
}

double height_of(const Setting& setting, int first, int last) {
    const double end = last >= setting.lines ? setting.height : top_of(setting, last);
    return end - (first == 0 ? 0 : top_of(setting, first));
}

std::vector<Area> areas_of(const Setting& setting, std::size_t begin, std::size_t end) {
    std::vector<Area> areas;
    const Iterator iterator(pango_layout_get_iter(setting.layout.get()));
    int number = 0;
    do {
        PangoLayoutLine* line = pango_layout_iter_get_line_readonly(iterator.get());
        const auto from = std::max<int>(static_cast<int>(begin), line->start_index);
        const auto to = std::min<int>(static_cast<int>(end), line->start_index + line->length);
        if (from < to) {
            const Area box = box_of_line(iterator.get(), number);
            int* ranges = nullptr;
            int count = 0;
            pango_layout_line_get_x_ranges(line, from, to, &ranges, &count);
            for (std::size_t i = 0; i < 2 * static_cast<std::size_t>(count); i += 2) {
                // Counted from the left edge of the layout, alignment included.
                const double x = points(ranges[i]);
                areas.push_back({number, x, box.y, points(ranges[i + 1]) - x, box.height});
            }
            g_free(ranges);
        }
        ++number;
    } while (pango_layout_iter_next_line(iterator.get()) != FALSE);
    return areas;
}

void paint_lines(cairo_t* paper, const Setting& setting, int first, int last, double x, double y) {
    const Iterator iterator(pango_layout_get_iter(setting.layout.get()));
    double top = 0;
    int number = 0;
    do {
        if (number >= last) {
            break;
        }
        if (number >= first) {
            const Area box = box_of_line(iterator.get(), number);
            top = number == first ? box.y : top;
            const double baseline = points(pango_layout_iter_get_baseline(iterator.get()));
            cairo_move_to(paper, x + box.x, y + baseline - top);
            pango_cairo_show_layout_line(paper,
                                         pango_layout_iter_get_line_readonly(iterator.get()));
        }
        ++number;
    } while (pango_layout_iter_next_line(iterator.get()) != FALSE);
}

} // namespace matchmark::publish
