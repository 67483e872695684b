// Drawings as a PDF, each on a page of its own, true to the millimetre.
#include "draw/lettering.hpp"
#include "draw/paint.hpp"

#include <cairo-pdf.h>
#include <cairo.h>

#include <fmt/core.h>

#include <algorithm>
#include <memory>
#include <string_view>

namespace matchmark::draw {

namespace {

constexpr double units_per_mm = 72 / 25.4; // PDF 32000-1, 8.3.2.3: a unit is 1/72 inch

struct DestroySurface {
    void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
};
struct DestroyContext {
    void operator()(cairo_t* context) const { cairo_destroy(context); }
};
using Surface = std::unique_ptr<cairo_surface_t, DestroySurface>;
using PdfContext = std::unique_ptr<cairo_t, DestroyContext>;

cairo_status_t append_bytes(void* bytes, const unsigned char* data, unsigned length) {
    static_cast<std::string*>(bytes)->append(reinterpret_cast<const char*>(data), length);
    return CAIRO_STATUS_SUCCESS;
}

void set_ink(cairo_t* cairo, Ink ink) {
    const double share = brightness(ink);
    cairo_set_source_rgb(cairo, share, share, share);
}

void ink_path(cairo_t* cairo, const std::optional<Stroke>& stroke, const std::optional<Ink>& fill) {
    if (fill) {
        set_ink(cairo, *fill);
        cairo_fill_preserve(cairo);
    }
    if (stroke) {
        set_ink(cairo, stroke->ink);
        cairo_set_line_width(cairo, stroke->width);
        const std::vector<double> lengths = dashes(*stroke);
        cairo_set_dash(cairo, lengths.data(), static_cast<int>(lengths.size()), 0);
        cairo_stroke_preserve(cairo);
    }
    cairo_new_path(cairo);
}

void paint_page(cairo_t* cairo, const std::vector<Shape>& shapes);

struct PdfPainter {
    cairo_t* cairo;

    void operator()(const Line& line) const {
        cairo_move_to(cairo, line.from.x, line.from.y);
        cairo_line_to(cairo, line.to.x, line.to.y);
        ink_path(cairo, line.stroke, std::nullopt);
    }
    void operator()(const Rectangle& box) const {
        constexpr double quarter = 1.57079632679489661923;
        const double r = box.rounding;
        const Point from = box.corner;
        const Point to{from.x + box.width, from.y + box.height};
        if (r <= 0) {
            cairo_rectangle(cairo, from.x, from.y, box.width, box.height);
        } else {
            cairo_new_sub_path(cairo);
            cairo_arc(cairo, to.x - r, from.y + r, r, -quarter, 0);
            cairo_arc(cairo, to.x - r, to.y - r, r, 0, quarter);
            cairo_arc(cairo, from.x + r, to.y - r, r, quarter, 2 * quarter);
            cairo_arc(cairo, from.x + r, from.y + r, r, 2 * quarter, 3 * quarter);
            cairo_close_path(cairo);
        }
        ink_path(cairo, box.stroke, box.fill);
    }
    void operator()(const Circle& circle) const {
        constexpr double full = 6.28318530717958647692;
        cairo_new_sub_path(cairo);
        cairo_arc(cairo, circle.centre.x, circle.centre.y, circle.radius, 0, full);
        cairo_close_path(cairo);
        ink_path(cairo, circle.stroke, circle.fill);
    }
    void operator()(const Path& path) const {
        cairo_move_to(cairo, path.start.x, path.start.y);
        for (const Piece& piece : path.pieces) {
            if (piece.curved) {
                cairo_curve_to(cairo, piece.control_1.x, piece.control_1.y, piece.control_2.x,
                               piece.control_2.y, piece.to.x, piece.to.y);
            } else {
                cairo_line_to(cairo, piece.to.x, piece.to.y);
            }
        }
        if (path.closed) {
            cairo_close_path(cairo);
        }
        ink_path(cairo, path.stroke, path.fill);
    }
    void operator()(const Text& text) const {
        set_ink(cairo, text.ink);
        write_text(cairo, text);
    }
    void operator()(const Window& window) const {
        cairo_save(cairo);
        cairo_rectangle(cairo, window.corner.x, window.corner.y, window.width, window.height);
        cairo_clip(cairo);
        paint_page(cairo, window.shapes);
        cairo_restore(cairo);
    }
};

void paint_page(cairo_t* cairo, const std::vector<Shape>& shapes) {
    for (const Shape& shape : shapes) {
        std::visit(PdfPainter{cairo}, shape.form);
    }
}

bool is_heading(const Shape& shape) {
    const auto* text = std::get_if<Text>(&shape.form);
    return text != nullptr && text->heading;
}

// The structure that a reader's program walks: headings, and what is drawn as one figure.
void paint_tagged(cairo_t* cairo, const Scene& scene) {
    cairo_tag_begin(cairo, "Sect", nullptr);
    bool in_figure = false;
    for (const Shape& shape : scene.shapes) {
        const bool heading = is_heading(shape);
        if (in_figure && heading) {
            cairo_tag_end(cairo, "Figure");
        } else if (!in_figure && !heading) {
            cairo_tag_begin(cairo, "Figure", nullptr);
        }
        in_figure = !heading;
        if (heading) {
            cairo_tag_begin(cairo, "H1", nullptr);
        }
        std::visit(PdfPainter{cairo}, shape.form);
        if (heading) {
            cairo_tag_end(cairo, "H1");
        }
    }
    if (in_figure) {
        cairo_tag_end(cairo, "Figure");
    }
    cairo_tag_end(cairo, "Sect");
}

bool is_day(const std::string& written) {
    constexpr std::string_view form = "dddd-dd-dd";
    return written.size() >= form.size() &&
           std::equal(form.begin(), form.end(), written.begin(), [](char want, char found) {
               return want == 'd' ? found >= '0' && found <= '9' : found == want;
           });
}

// A day has no time of its own: midnight, as ISO 8601 writes it. Where no day is given Cairo would
// ask the clock.
std::string moment(const std::string& written) {
    if (!is_day(written)) {
        return "1970-01-01T00:00:00Z";
    }
    return written.size() > 10 && written[10] == 'T' ? written
                                                     : written.substr(0, 10) + "T00:00:00Z";
}

void describe(cairo_surface_t* pdf, const PdfNotes& notes) {
    const auto note = [&](cairo_pdf_metadata_t what, const std::string& words) {
        cairo_pdf_surface_set_metadata(pdf, what, words.c_str());
    };
    note(CAIRO_PDF_METADATA_TITLE, printable(notes.title));
    note(CAIRO_PDF_METADATA_AUTHOR, printable(notes.author));
    note(CAIRO_PDF_METADATA_CREATOR, "matchmark");
    note(CAIRO_PDF_METADATA_CREATE_DATE, moment(notes.created));
}

} // namespace

void paint_on(_cairo* paper, const Scene& scene) {
    cairo_save(paper);
    cairo_set_line_join(paper, CAIRO_LINE_JOIN_ROUND);
    paint_page(paper, scene.shapes);
    cairo_restore(paper);
}

std::string paint_pdf(const std::vector<Scene>& scenes, const PdfNotes& notes) {
    if (scenes.empty()) {
        return "";
    }
    std::string bytes;
    const auto size = [](double mm) { return mm * units_per_mm; };
    const Surface surface{cairo_pdf_surface_create_for_stream(
        append_bytes, &bytes, size(scenes.front().width), size(scenes.front().height))};
    cairo_surface_t* const pdf = surface.get();
    describe(pdf, notes);
    const PdfContext context{cairo_create(pdf)};
    cairo_t* const cairo = context.get();
    cairo_tag_begin(cairo, "Document", nullptr);
    for (std::size_t page = 0; page < scenes.size(); ++page) {
        const Scene& scene = scenes[page];
        if (page > 0) {
            cairo_show_page(cairo);
            cairo_pdf_surface_set_size(pdf, size(scene.width), size(scene.height));
        }
        cairo_save(cairo);
        cairo_scale(cairo, units_per_mm, units_per_mm);
        cairo_set_line_join(cairo, CAIRO_LINE_JOIN_ROUND);
        paint_tagged(cairo, scene);
        cairo_restore(cairo);
    }
    cairo_tag_end(cairo, "Document");
    for (std::size_t page = 0; page < scenes.size(); ++page) {
        const std::string target = fmt::format("page={} pos=[0 0]", page + 1);
        cairo_pdf_surface_add_outline(pdf, CAIRO_PDF_OUTLINE_ROOT,
                                      printable(scenes[page].title).c_str(), target.c_str(),
                                      CAIRO_PDF_OUTLINE_FLAG_OPEN);
    }
    cairo_show_page(cairo);
    cairo_surface_finish(pdf);
    // A surface in an error state gives no PDF rather than a broken one.
    return cairo_surface_status(pdf) == CAIRO_STATUS_SUCCESS ? bytes : std::string();
}

} // namespace matchmark::draw
