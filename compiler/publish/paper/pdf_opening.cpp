// How a guide's PDF begins: the title block as on a drawing, the aim, the contents.
#include "publish/facts.hpp"
#include "publish/fixed_words.hpp"
#include "publish/paper/pdf_parts.hpp"
#include "publish/paper/prose.hpp"

#include <algorithm>

namespace matchmark::publish {

namespace {

constexpr double cell_pad = 7;
constexpr std::size_t cells_in_row = 4;

void add_cells(Flow& flow, const std::vector<Fact>& all, std::size_t begin, std::size_t end) {
    const double width = flow.width / static_cast<double>(end - begin);
    Type term_type;
    term_type.size = 9;
    Type value_type;
    value_type.size = 10.5;
    value_type.bold = true;
    double height = 0;
    std::vector<Letters> pieces;
    for (std::size_t i = begin; i < end; ++i) {
        const double x = flow.left + cell_pad + width * static_cast<double>(i - begin);
        const double room = width - 2 * cell_pad;
        pieces.push_back(letters(flow, all[i].term, term_type, x, 3.5, room, "P"));
        const double y = 3.5 + pieces.back().setting->height;
        pieces.push_back(letters(flow, all[i].words, value_type, x, y, room, "P"));
        height = std::max(height, y + pieces.back().setting->height);
    }
    Box& box = add_box(flow, height + 4.5);
    for (Letters& piece : pieces) {
        box.pieces.emplace_back(std::move(piece));
    }
    for (std::size_t i = begin + 1; i < end; ++i) {
        const double x = flow.left + width * static_cast<double>(i - begin);
        box.pieces.emplace_back(Stroke{x, 0, x, box.height, 0.6});
    }
}

} // namespace

void add_title_block(Leaflet& leaflet) {
    Flow& flow = leaflet.flow;
    const std::vector<Fact> all = facts(leaflet.document);
    Type type;
    type.size = 21;
    type.bold = true;
    begin_inner(flow);
    const double room = flow.width - 2 * cell_pad;
    Letters title =
        letters(flow, leaflet.document.title, type, flow.left + cell_pad, 9, room, "H1");
    Box& head = add_box(flow, title.setting->height + 18);
    head.pieces.emplace_back(std::move(title));
    head.pieces.emplace_back(Target{"title", {}, 1});
    for (std::size_t begin = 0; begin < all.size();) {
        // The last row is never one cell alone where two rows can share.
        const std::size_t left = all.size() - begin;
        const std::size_t here =
            left == cells_in_row + 1 ? cells_in_row - 1 : std::min(left, cells_in_row);
        add_cells(flow, all, begin, begin + here);
        begin += here;
    }
    const double right = flow.left + flow.width;
    for (std::size_t i = 0; i < flow.boxes.size(); ++i) {
        Box& box = flow.boxes[i];
        box.pieces.emplace_back(Stroke{flow.left, 0, flow.left, box.height, 1.6});
        box.pieces.emplace_back(Stroke{right, 0, right, box.height, 1.6});
        const bool outer = i <= 1;
        box.pieces.emplace_back(Stroke{flow.left - 0.8, 0, right + 0.8, 0, outer ? 1.6 : 0.6});
    }
    const double end = flow.boxes.back().height;
    flow.boxes.back().pieces.emplace_back(Stroke{flow.left - 0.8, end, right + 0.8, end, 1.6});
    end_inner(flow);
    leave(flow, 12);
}

void add_opening(Leaflet& leaflet) {
    Flow& flow = leaflet.flow;
    const guide::Document& document = leaflet.document;
    Type bold;
    bold.bold = true;
    if (!document.reader.empty()) {
        add_text(flow, document.reader, bold);
        leave(flow, 4);
    }
    if (!document.deferral.empty()) {
        add_text(flow, document.deferral, {});
    }
    leave(flow, 4);
    add_passages(flow, document.language, document.passages);
    if (!document.goals.empty()) {
        add_label(flow, say(document.language, "The aim"));
        open(flow, "L");
        for (const guide::Words& goal : document.goals) {
            Rich rich;
            add(rich, "\u2022 ");
            add(rich, goal);
            add_text(flow, rich, {}, "LI");
            leave(flow, 2);
        }
        close(flow);
    }
    for (const guide::Picture& picture : document.pictures) {
        add_picture(leaflet, picture);
    }
    leave(flow, 8);
}

void add_contents(Leaflet& leaflet) {
    Flow& flow = leaflet.flow;
    begin_outer(flow);
    add_label(flow, say(leaflet.document.language, "Contents"));
    open(flow, "TOC");
    for (const Part& part : parts_of(leaflet.document)) {
        Rich rich;
        add_leading(rich, part.title, part.place);
        add(rich, part.more.empty() ? "" : ", " + part.more);
        Type type;
        const double room = flow.width - 40;
        Letters piece = letters(flow, rich, type, flow.left, 1.5, room, "TOCI");
        Box& box = add_box(flow, piece.setting->height + 3);
        const double right = flow.left + flow.width;
        const double from = flow.left + piece.setting->width + 6;
        const double y = box.height - 4.5;
        box.pieces.emplace_back(std::move(piece));
        if (from < right - 30) {
            box.pieces.emplace_back(Stroke{from, y, right - 24, y, 0.4, true, true});
        }
        box.pieces.emplace_back(PageOf{part.place, right, 1.5, type.size});
    }
    close(flow);
    end_outer(flow);
    leave(flow, 18);
}

std::vector<Part> parts_of(const guide::Document& document) {
    const Language& in = document.language;
    std::vector<Part> parts;
    if (!document.safety.empty()) {
        parts.push_back({"safety", say(in, "Safety first"), {}});
    }
    const bool needs = !document.protection.empty() || !document.tools.empty() ||
                       !document.spares.empty() || !document.supplies.empty() ||
                       !document.fasteners.empty();
    if (needs) {
        parts.push_back({"needs", say(in, "What you need"), {}});
    }
    for (std::size_t i = 0; i < document.sections.size(); ++i) {
        const guide::Section& section = document.sections[i];
        if (!section.steps.empty()) {
            parts.push_back(
                {"section-" + std::to_string(i + 1), section.title, step_range(section, in)});
        }
    }
    if (!document.disposals.empty()) {
        parts.push_back({"afterwards", say(in, "Afterwards"), {}});
    }
    if (!document.figures.empty()) {
        parts.push_back({"drawings", say(in, "Drawings"), {}});
    }
    return parts;
}

void add_heading(Leaflet& leaflet, const std::string& place) {
    Flow& flow = leaflet.flow;
    const std::vector<Part> parts = parts_of(leaflet.document);
    const auto part = std::find_if(parts.begin(), parts.end(),
                                   [&](const Part& one) { return one.place == place; });
    if (part == parts.end()) {
        return;
    }
    Type type;
    type.size = 15;
    type.bold = true;
    Type small;
    small.size = 9;
    small.align = Align::right;
    leave(flow, 20);
    Letters title = letters(flow, part->title, type, flow.left, 6, flow.width - 120, "H2");
    Box& box = add_box(flow, title.setting->height + 13);
    box.pieces.emplace_back(Target{place, part->title, 1});
    box.pieces.emplace_back(std::move(title));
    if (!part->more.empty()) {
        box.pieces.emplace_back(
            letters(flow, part->more, small, flow.left + flow.width - 120, 11, 120, "P"));
    }
    box.pieces.emplace_back(Stroke{flow.left, 1.2, flow.left + flow.width, 1.2, 2.4});
    box.with_next = true;
}

void add_label(Flow& flow, std::string_view words) {
    Type type;
    type.size = 10.5;
    type.bold = true;
    // A heading has room enough below it.
    const bool below_heading = !flow.boxes.empty() && flow.boxes.back().with_next;
    leave(flow, below_heading ? 0 : 8);
    add_text(flow, words, type);
    flow.boxes.back().with_next = true;
    leave(flow, 3);
}

void add_passages(Flow& flow, const Language& in, const std::vector<guide::Passage>& passages) {
    for (const guide::Passage& passage : passages) {
        if (passage.kind == guide::PassageKind::text) {
            leave(flow, 5);
            add_prose(flow, passage.markdown);
            continue;
        }
        constexpr double by = 11;
        const double left = flow.left;
        const std::size_t first = flow.boxes.size();
        flow.left += by;
        flow.width -= by;
        leave(flow, 7);
        add_text(flow,
                 passage.kind == guide::PassageKind::note ? say(in, "Note") : say(in, "Reason"),
                 {9});
        flow.boxes.back().with_next = true;
        leave(flow, 1);
        add_prose(flow, passage.markdown);
        flow.left -= by;
        flow.width += by;
        for (std::size_t i = first; i < flow.boxes.size(); ++i) {
            Box& box = flow.boxes[i];
            const double above = i == first ? 0 : box.gap;
            box.pieces.emplace_back(Stroke{left + 2, -above, left + 2, box.height, 3, false, true});
        }
        leave(flow, 6);
    }
}

} // namespace matchmark::publish
