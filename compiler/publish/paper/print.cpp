// Boxes become the bytes of a PDF: pages, their furniture, structure, links and outline.
#include "publish/paper/print.hpp"

#include "language/words.hpp"
#include "publish/paper/symbol.hpp"
#include "publish/paper/words.hpp"

#include <algorithm>
#include <cairo-pdf.h>
#include <fmt/core.h>
#include <map>
#include <set>

namespace matchmark::publish {

namespace {

cairo_status_t keep(void* closure, const unsigned char* data, unsigned length) {
    static_cast<std::string*>(closure)->append(reinterpret_cast<const char*>(data), length);
    return CAIRO_STATUS_SUCCESS;
}

void ink(cairo_t* paper, double grey) { cairo_set_source_rgb(paper, grey, grey, grey); }

constexpr double soft = 0.92;
constexpr double rule_grey = 0.55;

// What is known once every box has its page.
struct Distribution {
    std::map<std::string, std::size_t> page_of; // by target, from 1
    std::vector<std::string> section_of;        // by page: the section at its head
};

struct Painter {
    const Printer& printer;
    const Distribution& distribution;
    std::set<std::string>& placed;     // targets that stand in the file already
    std::vector<std::string>& figures; // their words, in the order of painting
    double top = 0;                    // of the box, from the top of the sheet
    bool repeated = false;
    bool at_head = false; // of the page

    cairo_t* paper() const { return printer.paper.get(); }
    void begin(const char* tag) const {
        if (!repeated) {
            cairo_tag_begin(paper(), tag, nullptr);
        }
    }
    void end(const char* tag) const {
        if (!repeated) {
            cairo_tag_end(paper(), tag);
        }
    }

    void tell(const std::string& words) const {
        if (!repeated) {
            figures.push_back(settable(words));
        }
    }
    void frame_words(const Letters& piece, double shift) const;
    void lead(const Letters& piece, double shift) const;
    void operator()(const Letters& piece) const;
    void operator()(const Stroke& piece) const;
    void operator()(const Frame& piece) const;
    void operator()(const Alert& piece) const;
    void operator()(const SignPiece& piece) const;
    void operator()(const PicturePiece& piece) const;
    void operator()(const DrawingPiece& piece) const;
    void operator()(const Target& piece) const;
    void operator()(const PageOf& piece) const;
};

void Painter::frame_words(const Letters& piece, double shift) const {
    for (const Stretch& stretch : piece.setting->framed) {
        for (const Area& area : areas_of(*piece.setting, stretch.begin, stretch.end)) {
            if (area.line < piece.first || area.line >= piece.last) {
                continue;
            }
            const double x = piece.x + area.x;
            const double y = piece.y + top + shift + area.y;
            if (stretch.look.ringed) {
                const double middle = y + area.height * 0.5;
                const double radius = std::max(area.height * 0.47, area.width / 2 + 2);
                paint_ring(paper(), x + area.width / 2, middle, radius, 0.9);
            } else {
                cairo_set_line_width(paper(), 0.7);
                cairo_rectangle(paper(), x - 2.2, y + area.height * 0.06, area.width + 4.4,
                                area.height * 0.88);
                cairo_stroke(paper());
            }
        }
    }
}

void Painter::lead(const Letters& piece, double shift) const {
    for (const Leading& leading : piece.setting->leadings) {
        const bool inside = distribution.page_of.count(leading.place) != 0;
        if (repeated || (leading.address.empty() && !inside)) {
            continue;
        }
        for (const Area& area : areas_of(*piece.setting, leading.begin, leading.end)) {
            if (area.line < piece.first || area.line >= piece.last) {
                continue;
            }
            const double x = piece.x + area.x;
            const double y = piece.y + top + shift + area.y;
            const std::string where = leading.address.empty() ? "dest='" + leading.place + "'"
                                                              : "uri='" + leading.address + "'";
            const std::string link = fmt::format("{} rect=[{:.2f} {:.2f} {:.2f} {:.2f}]", where, x,
                                                 y, area.width, area.height);
            cairo_set_line_width(paper(), 0.4);
            cairo_move_to(paper(), x, y + area.height - 1.4);
            cairo_line_to(paper(), x + area.width, y + area.height - 1.4);
            cairo_stroke(paper());
            cairo_tag_begin(paper(), CAIRO_TAG_LINK, link.c_str());
            cairo_tag_end(paper(), CAIRO_TAG_LINK);
        }
    }
}

void Painter::operator()(const Letters& piece) const {
    if (piece.tag != nullptr) {
        begin(piece.tag);
    }
    ink(paper(), piece.light ? 1 : 0);
    paint_lines(paper(), *piece.setting, piece.first, piece.last, piece.x, piece.y + top);
    const double shift = piece.first == 0 ? 0 : -height_of(*piece.setting, 0, piece.first);
    frame_words(piece, shift);
    lead(piece, shift);
    if (piece.tag != nullptr) {
        end(piece.tag);
    }
}

void Painter::operator()(const Stroke& piece) const {
    if (piece.parting && at_head) {
        return;
    }
    constexpr double dash = 3;
    ink(paper(), piece.grey ? rule_grey : 0);
    cairo_set_line_width(paper(), piece.width);
    cairo_set_dash(paper(), &dash, piece.dashed ? 1 : 0, 0);
    cairo_move_to(paper(), piece.x1, piece.y1 + top);
    cairo_line_to(paper(), piece.x2, piece.y2 + top);
    cairo_stroke(paper());
    cairo_set_dash(paper(), nullptr, 0, 0);
}

void Painter::operator()(const Frame& piece) const {
    constexpr double dash = 3;
    if (piece.ground != Ground::none) {
        ink(paper(), piece.ground == Ground::black ? 0 : soft);
        cairo_rectangle(paper(), piece.x, piece.y + top, piece.width, piece.height);
        cairo_fill(paper());
    }
    if (piece.line > 0) {
        ink(paper(), piece.grey ? rule_grey : 0);
        cairo_set_line_width(paper(), piece.line);
        cairo_set_dash(paper(), &dash, piece.dashed ? 1 : 0, 0);
        cairo_rectangle(paper(), piece.x, piece.y + top, piece.width, piece.height);
        cairo_stroke(paper());
        cairo_set_dash(paper(), nullptr, 0, 0);
    }
}

void Painter::operator()(const Alert& piece) const {
    paint_alert(paper(), piece.x, piece.y + top, piece.height, piece.light);
}

void Painter::operator()(const SignPiece& piece) const {
    begin("Figure");
    tell("Sign: " + piece.sign->title);
    paint_sign(paper(), *piece.sign, piece.x, piece.y + top, piece.side);
    end("Figure");
}

void Painter::operator()(const PicturePiece& piece) const {
    PicturePiece here = piece;
    here.y += top;
    begin("Figure");
    tell(piece.words);
    paint_picture(paper(), printer.setter, printer.gallery, here);
    end("Figure");
}

void Painter::operator()(const DrawingPiece& piece) const {
    begin("Figure");
    tell(piece.words);
    cairo_save(paper());
    cairo_translate(paper(), piece.x, piece.y + top + (piece.sideways ? piece.width : 0));
    if (piece.sideways) {
        constexpr double quarter_turn = 1.5707963267948966;
        cairo_rotate(paper(), -quarter_turn);
    }
    cairo_scale(paper(), piece.scale * points_per_mm, piece.scale * points_per_mm);
    ink(paper(), 0);
    (*piece.painter)(paper(), piece.figure);
    cairo_restore(paper());
    end("Figure");
}

void Painter::operator()(const Target& piece) const {
    // Two targets of one name would be an error of the whole file.
    if (repeated || !placed.insert(piece.name).second) {
        return;
    }
    const std::string where = fmt::format("name='{}' x={:.2f} y={:.2f}", piece.name,
                                          printer.margins.side, std::max(0.0, top - 6));
    cairo_tag_begin(paper(), CAIRO_TAG_DEST, where.c_str());
    cairo_tag_end(paper(), CAIRO_TAG_DEST);
}

void Painter::operator()(const PageOf& piece) const {
    const auto page = distribution.page_of.find(piece.name);
    if (page == distribution.page_of.end()) {
        return;
    }
    Rich rich;
    add(rich, std::to_string(page->second));
    Type type;
    type.size = piece.size;
    type.align = Align::right;
    constexpr double width = 60;
    const auto setting = set_text(printer.setter, rich, type, width);
    ink(paper(), 0);
    paint_lines(paper(), *setting, 0, setting->lines, piece.x - width, piece.y + top);
}

void paint_box(const Painter& painter, const Placed& placed, std::vector<const char*>& open_tags) {
    cairo_t* paper = painter.paper();
    if (!placed.repeated) {
        for (const char* tag : placed.box->opens) {
            painter.begin(tag);
            open_tags.push_back(tag);
        }
    }
    cairo_save(paper);
    if (placed.scale < 1) {
        const double left = painter.printer.margins.side;
        cairo_translate(paper, left * (1 - placed.scale), painter.top * (1 - placed.scale));
        cairo_scale(paper, placed.scale, placed.scale);
    }
    for (const Piece& piece : placed.box->pieces) {
        std::visit(painter, piece);
    }
    cairo_restore(paper);
    for (unsigned i = 0; i < placed.box->closes && !placed.repeated && !open_tags.empty(); ++i) {
        painter.end(open_tags.back());
        open_tags.pop_back();
    }
}

Distribution distribute(const std::vector<Page>& pages) {
    Distribution known;
    std::string section;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        std::string at_head = section;
        for (const Placed& placed : pages[i]) {
            for (const Piece& piece : placed.box->pieces) {
                const auto* target = std::get_if<Target>(&piece);
                if (target == nullptr || placed.repeated) {
                    continue;
                }
                known.page_of.emplace(target->name, i + 1);
                if (target->level == 1 && !target->title.empty()) {
                    section = target->title;
                    at_head = &placed == &pages[i].front() ? section : at_head;
                }
            }
        }
        known.section_of.push_back(at_head);
    }
    return known;
}

void furniture(const Printer& printer, const Imprint& imprint, const Distribution& known,
               std::size_t page, std::size_t count) {
    cairo_t* paper = printer.paper.get();
    const double left = printer.margins.side;
    const double width = printer.size.width - 2 * left;
    const auto line = [&](const std::string& words, Align align, double y, double from,
                          double room) {
        Rich rich;
        add(rich, words);
        Type type;
        type.size = 9;
        type.align = align;
        type.one_line = true;
        const auto setting = set_text(printer.setter, rich, type, room);
        paint_lines(paper, *setting, 0, 1, from, y);
    };
    const auto rule = [&](double y) {
        cairo_set_line_width(paper, 0.5);
        cairo_move_to(paper, left, y);
        cairo_line_to(paper, left + width, y);
        cairo_stroke(paper);
    };
    // Not part of what is read in order.
    cairo_tag_begin(paper, "Private", nullptr);
    ink(paper, 0);
    if (page > 1) {
        const double y = printer.margins.top - 24;
        line(imprint.head, Align::left, y, left, width * 0.66);
        line(known.section_of[page - 1], Align::right, y, left + width * 0.68, width * 0.32);
        rule(y + 13);
    }
    const double y = printer.size.height - printer.margins.bottom + 14;
    rule(y - 4);
    line(imprint.foot, Align::left, y, left, width - 90);
    line(language::fill_text(imprint.page_words,
                             {{"page", std::to_string(page)}, {"pages", std::to_string(count)}}),
         Align::right, y, left + width - 80, 80);
    cairo_tag_end(paper, "Private");
}

void add_outline(const Printer& printer, const std::vector<Box>& boxes) {
    std::set<std::string> seen;
    int section = CAIRO_PDF_OUTLINE_ROOT;
    for (const Box& box : boxes) {
        for (const Piece& piece : box.pieces) {
            const auto* target = std::get_if<Target>(&piece);
            if (target == nullptr || target->title.empty() || !seen.insert(target->name).second) {
                continue;
            }
            const std::string where = "dest='" + target->name + "'";
            const bool top = target->level == 1;
            const int parent = top ? CAIRO_PDF_OUTLINE_ROOT : section;
            const int id = cairo_pdf_surface_add_outline(
                printer.surface.get(), parent, settable(target->title).c_str(), where.c_str(),
                top ? CAIRO_PDF_OUTLINE_FLAG_OPEN : static_cast<cairo_pdf_outline_flags_t>(0));
            section = top ? id : section;
        }
    }
}

void state(const Printer& printer, cairo_pdf_metadata_t what, const std::string& words) {
    if (!words.empty()) {
        cairo_pdf_surface_set_metadata(printer.surface.get(), what, settable(words).c_str());
    }
}

// "2026-01-31" or "2026-01-31T12:00:00Z". By hand: to build a regular expression takes a hundredth
// of the time that a whole guide takes.
bool is_moment(std::string_view text) {
    constexpr std::string_view form = "dddd-dd-ddTdd:dd:ddZ";
    const auto fits = [](char found, char wanted) {
        return wanted == 'd' ? found >= '0' && found <= '9' : found == wanted;
    };
    if ((text.size() != 10 && text.size() != form.size()) ||
        !std::equal(text.begin(), text.end(), form.begin(), fits)) {
        return false;
    }
    const auto within = [&](std::size_t at, int from, int to) {
        const int number = (text[at] - '0') * 10 + (text[at + 1] - '0');
        return number >= from && number <= to;
    };
    const bool day = within(5, 1, 12) && within(8, 1, 31);
    return day &&
           (text.size() == 10 || (within(11, 0, 23) && within(14, 0, 59) && within(17, 0, 59)));
}

} // namespace

Printer printer_for(Paper paper, const Margins& margins, const std::string& tag) {
    Printer printer;
    printer.size = size_of(paper);
    printer.margins = margins;
    printer.bytes = std::make_unique<std::string>();
    printer.surface = {cairo_pdf_surface_create_for_stream(&keep, printer.bytes.get(),
                                                           printer.size.width, printer.size.height),
                       &cairo_surface_destroy};
    printer.paper = {cairo_create(printer.surface.get()), &cairo_destroy};
    printer.setter = setter_for(printer.paper.get(), tag);
    return printer;
}

Flow flow_for(const Printer& printer) {
    return {printer.setter, printer.margins.side, printer.size.width - 2 * printer.margins.side};
}

std::string print(Printer& printer, const std::vector<Box>& boxes, const Imprint& imprint) {
    const Margins& margins = printer.margins;
    const auto pages = pages_of(boxes, printer.size.height - margins.top - margins.bottom);
    const Distribution known = distribute(pages);
    state(printer, CAIRO_PDF_METADATA_TITLE, imprint.title);
    state(printer, CAIRO_PDF_METADATA_AUTHOR, imprint.author);
    state(printer, CAIRO_PDF_METADATA_SUBJECT, imprint.subject);
    state(printer, CAIRO_PDF_METADATA_CREATOR, "matchmark");
    state(printer, CAIRO_PDF_METADATA_CREATE_DATE, date_of_creation(imprint.created, imprint.date));
    cairo_t* paper = printer.paper.get();
    cairo_tag_begin(paper, "Document", nullptr);
    std::set<std::string> placed_targets;
    std::vector<std::string> figures;
    std::vector<const char*> open_tags;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        for (const Placed& placed : pages[i]) {
            const Painter painter{printer,
                                  known,
                                  placed_targets,
                                  figures,
                                  margins.top + placed.y,
                                  placed.repeated,
                                  &placed == &pages[i].front()};
            paint_box(painter, placed, open_tags);
        }
        furniture(printer, imprint, known, i + 1, pages.size());
        if (i + 1 < pages.size()) {
            cairo_show_page(paper);
        }
    }
    for (; !open_tags.empty(); open_tags.pop_back()) {
        cairo_tag_end(paper, open_tags.back());
    }
    cairo_tag_end(paper, "Document");
    add_outline(printer, boxes);
    cairo_show_page(paper);
    cairo_surface_finish(printer.surface.get());
    const bool whole = cairo_status(paper) == CAIRO_STATUS_SUCCESS &&
                       cairo_surface_status(printer.surface.get()) == CAIRO_STATUS_SUCCESS;
    return whole ? with_words(std::move(*printer.bytes), figures, imprint.language) : std::string();
}

std::string date_of_creation(const std::string& created, const std::string& date) {
    for (const std::string& one : {created, date}) {
        if (is_moment(one)) {
            return one.size() == 10 ? one + "T00:00:00Z" : one;
        }
    }
    return "1970-01-01T00:00:00Z";
}

} // namespace matchmark::publish
