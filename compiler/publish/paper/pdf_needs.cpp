// What a guide asks for, and what it warns of, before the first step; and what is left at the end.
#include "language/punctuation.hpp"
#include "publish/facts.hpp"
#include "publish/fixed_words.hpp"
#include "publish/paper/panel.hpp"
#include "publish/paper/pdf_parts.hpp"
#include "publish/paper/prose.hpp"
#include "publish/paper/table.hpp"

#include <algorithm>

namespace matchmark::publish {

using guide::Provision;

namespace {

constexpr double tick_size = 9;

Type small_type() {
    Type type;
    type.size = 9;
    return type;
}

Rich rich_of(const std::string& words) {
    Rich rich;
    add(rich, words);
    return rich;
}

// A short list stays on one page, up to `end_inner`.
void begin_short_list(Flow& flow, std::size_t count) {
    constexpr std::size_t short_list = 12;
    if (count <= short_list) {
        begin_inner(flow);
    }
}

// Lines with a box to tick each.
void add_ticked(Flow& flow, const std::vector<Rich>& lines) {
    constexpr double by = 18;
    const double left = flow.left;
    flow.left += by;
    flow.width -= by;
    open(flow, "L");
    for (const Rich& line : lines) {
        leave(flow, 3);
        add_tick(flow, add_text(flow, line, {}, "LI"), left, tick_size);
    }
    close(flow);
    flow.left = left;
    flow.width += by;
}

void add_need_lines(Flow& flow, const std::string& label, const std::vector<guide::Words>& lines) {
    if (lines.empty()) {
        return;
    }
    add_label(flow, label);
    open(flow, "L");
    for (const guide::Words& words : lines) {
        Rich rich;
        add(rich, "\u2022 ");
        add(rich, words);
        add_text(flow, rich, {}, "LI");
        leave(flow, 2);
    }
    close(flow);
}

void add_protection(Leaflet& leaflet) {
    Flow& flow = leaflet.flow;
    if (leaflet.document.protection.empty()) {
        return;
    }
    constexpr double side = 34;
    constexpr double by = side + 10;
    begin_short_list(flow, leaflet.document.protection.size());
    add_label(flow, say(leaflet.document.language, "Protection to wear"));
    open(flow, "L");
    for (const Provision& gear : leaflet.document.protection) {
        const guide::Sign* sign = sign_of(leaflet.document, gear.sign);
        Letters words = letters(flow, one_line(gear), {}, flow.left + by, 0, flow.width - by, "LI");
        const double height = std::max(sign == nullptr ? 0 : side, words.setting->height);
        words.y = (height - words.setting->height) / 2;
        leave(flow, 4);
        Box& box = add_box(flow, height);
        if (sign != nullptr) {
            box.pieces.emplace_back(SignPiece{sign, flow.left, 0, side});
        } else {
            box.pieces.emplace_back(Frame{flow.left, words.y + 1.5, tick_size, tick_size, 0.9});
            words.x = flow.left + 18;
        }
        box.pieces.emplace_back(std::move(words));
    }
    close(flow);
    end_inner(flow);
}

void add_provisions(Flow& flow, const guide::Document& document) {
    const Language& in = document.language;
    Table table;
    table.columns = {{3.4}, {0.9, Align::right}, {0.9, Align::right}};
    table.head = {rich_of(say(in, "Spares and supplies")), rich_of(say(in, "Amount")),
                  rich_of(say(in, "Price"))};
    for (const auto* provisions : {&document.spares, &document.supplies}) {
        for (const Provision& one : *provisions) {
            const std::string purpose = one.purpose.empty() ? "" : ", " + one.purpose;
            table.rows.push_back(
                {rich_of(one.words + purpose), rich_of(one.amount), rich_of(one.price)});
        }
    }
    if (!table.rows.empty() && !document.cost.empty()) {
        table.rows.push_back(
            {rich_of(sum_words(document)), {}, rich_of(language::said_list(in, document.cost))});
        table.sum_below = true;
    }
    leave(flow, 10);
    begin_short_list(flow, table.rows.size());
    add_table(flow, table, small_type());
    end_inner(flow);
}

void add_fasteners(Flow& flow, const guide::Document& document) {
    const Language& in = document.language;
    Table table;
    table.columns = {{1.5}, {2.3}, {1.1, Align::right}};
    table.head = {rich_of(say(in, "Fasteners that you will handle")),
                  rich_of(say(in, "What it is")), rich_of(say(in, "Torque"))};
    for (const guide::FastenerRow& row : document.fasteners) {
        Rich which = rich_of(row.words);
        add_variants(which, row.variants, in);
        const std::string told =
            row.told_by.empty() ? "" : ", " + say_with(in, "told by {what}", "what", row.told_by);
        table.rows.push_back({std::move(which), rich_of(row.description + told), {}});
        Look bold;
        bold.bold = true;
        add(table.rows.back()[2], row.torque, bold);
    }
    leave(flow, 12);
    begin_short_list(flow, table.rows.size());
    add_table(flow, table, small_type());
    end_inner(flow);
}

} // namespace

void add_tick(Flow& flow, std::size_t box, double left, double size) {
    flow.boxes[box].pieces.emplace_back(Frame{left + 0.5, 1.6, size, size, 0.9});
}

void add_safety(Leaflet& leaflet) {
    Flow& flow = leaflet.flow;
    const guide::Document& document = leaflet.document;
    const Language& in = document.language;
    if (document.safety.empty()) {
        // What is stored and what is voided is told even where nothing is warned of.
        add_need_lines(flow, say(in, "What is stored in it"), document.energies);
        add_need_lines(flow, say(in, "What this work voids"), document.ratings);
        return;
    }
    open(flow, "Sect");
    add_heading(leaflet, "safety");
    add_text(flow,
             say(in, "Read all of this before you begin. Each message stands again at the step "
                     "that it is about."),
             {});
    flow.boxes.back().with_next = true;
    for (const guide::GatheredMessage& gathered : document.safety) {
        Rich where;
        const std::string see =
            say(in, gathered.steps.empty() ? "The whole work." : "See {steps}.");
        const std::size_t place = std::min(see.find("{steps}"), see.size());
        add(where, see.substr(0, place));
        for (std::size_t i = 0; i < gathered.steps.size(); ++i) {
            const bool last = i + 1 == gathered.steps.size();
            const std::string step =
                say_with(in, "step {step}", "step", std::to_string(gathered.steps[i]));
            add(where, i == 0 ? "" : last ? language::joined_by(in, "and", step) : ", ");
            add_leading(where, step, place_of_step(gathered.steps[i]));
        }
        add(where, place == see.size() ? "" : see.substr(place + 7));
        leave(flow, 8);
        add_panel(flow, document, gathered.message, where);
    }
    add_need_lines(flow, say(in, "What is stored in it"), document.energies);
    add_need_lines(flow, say(in, "What this work voids"), document.ratings);
    close(flow);
}

void add_needs(Leaflet& leaflet) {
    Flow& flow = leaflet.flow;
    const guide::Document& document = leaflet.document;
    open(flow, "Sect");
    add_heading(leaflet, "needs");
    add_protection(leaflet);
    if (!document.tools.empty()) {
        begin_short_list(flow, document.tools.size());
        add_label(flow, say(document.language, "Tools"));
        std::vector<Rich> lines;
        for (const Provision& tool : document.tools) {
            lines.push_back(rich_of(one_line(tool)));
        }
        add_ticked(flow, lines);
        end_inner(flow);
    }
    add_provisions(flow, document);
    if (!document.fasteners.empty()) {
        add_fasteners(flow, document);
    }
    close(flow);
}

void add_afterwards(Leaflet& leaflet) {
    Flow& flow = leaflet.flow;
    if (leaflet.document.disposals.empty()) {
        return;
    }
    open(flow, "Sect");
    begin_outer(flow);
    add_heading(leaflet, "afterwards");
    add_text(flow,
             say(leaflet.document.language,
                 "These go to a collecting point under the rules of your country:"),
             {});
    std::vector<Rich> lines;
    for (const guide::Disposal& disposal : leaflet.document.disposals) {
        Look bold;
        bold.bold = true;
        lines.push_back(rich_of(disposal.words + language::colon(leaflet.document.language)));
        add(lines.back(), disposal.waste_class, bold);
    }
    leave(flow, 4);
    add_ticked(flow, lines);
    end_outer(flow);
    close(flow);
}

} // namespace matchmark::publish
