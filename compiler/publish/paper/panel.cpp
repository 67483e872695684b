// Panels on paper: safety messages with their signal words, framed and shaded passages.
//
// The words and what they mean are those of ANSI Z535.6. A notice, which is about property alone,
// has no safety alert symbol (ANSI Z535.4, 4.14).
#include "publish/paper/panel.hpp"

#include "publish/fixed_words.hpp"
#include "publish/paper/prose.hpp"

#include <algorithm>

namespace matchmark::publish {

using guide::Message;
using guide::Signal;

namespace {

constexpr double pad = 8;
constexpr double sign_side = 40; // 14 mm

double line_of(Signal signal) {
    switch (signal) {
    case Signal::danger:
    case Signal::warning:
        return 3.5;
    case Signal::caution:
        return 2;
    case Signal::notice:
        break;
    }
    return 1;
}

// The boxes from `first` on become the slices of one frame, open where a page breaks it.
void draw_frame(Flow& flow, std::size_t first, double left, double width, Signal signal) {
    const double line = line_of(signal);
    const bool dashed = signal == Signal::notice;
    const double begin = left + line / 2;
    const double end = left + width - line / 2;
    for (std::size_t i = first; i < flow.boxes.size(); ++i) {
        Box& box = flow.boxes[i];
        if (i > first) {
            absorb_gap(box);
        }
        box.pieces.emplace_back(Stroke{begin, 0, begin, box.height, line, dashed});
        box.pieces.emplace_back(Stroke{end, 0, end, box.height, line, dashed});
        if (i == first) {
            box.pieces.emplace_back(Stroke{left, line / 2, left + width, line / 2, line, dashed});
        }
        if (i + 1 == flow.boxes.size()) {
            const double y = box.height - line / 2;
            box.pieces.emplace_back(Stroke{left, y, left + width, y, line, dashed});
        }
    }
}

// The band with the signal word; white on black for danger.
void add_band(Flow& flow, const Language& in, Signal signal) {
    const double line = line_of(signal);
    const bool black = signal == Signal::danger;
    Type type;
    type.size = 11.5;
    type.bold = true;
    type.italic = signal == Signal::notice;
    const bool alert = signal != Signal::notice;
    const double x = flow.left + line + pad + (alert ? 19 : 0);
    Letters word =
        letters(flow, guide::signal_word(signal, in), type, x, line + 2.5, flow.width, "P");
    word.light = black;
    Box& box = add_box(flow, word.setting->height + line + 5);
    box.with_next = true;
    if (black) {
        box.pieces.emplace_back(
            Frame{flow.left, 0, flow.width, box.height, 0, Ground::black, false});
    }
    if (alert) {
        box.pieces.emplace_back(Alert{flow.left + line + pad, line + 2.5, 13, black});
    }
    box.pieces.emplace_back(std::move(word));
    box.pieces.emplace_back(Stroke{flow.left, box.height, flow.left + flow.width, box.height,
                                   std::min(line, 1.0), signal == Signal::notice});
}

Rich about(const Language& in, const Message& message) {
    Rich rich;
    Look bold;
    bold.bold = true;
    add(rich, message.subject, bold);
    add_variants(rich, message.variants, in);
    if (message.full_in_step != 0) {
        const std::string step =
            say_with(in, "step {step}", "step", std::to_string(message.full_in_step));
        const std::string see = say(in, rich.text.empty() ? "See {step}" : ": see {step}");
        const std::size_t at = std::min(see.find("{step}"), see.size());
        add(rich, see.substr(0, at));
        add_leading(rich, step, place_of_step(message.full_in_step));
        add(rich, at == see.size() ? "" : see.substr(at + 6));
    }
    return rich;
}

double height_from(const Flow& flow, std::size_t first) {
    double height = 0;
    for (std::size_t i = first; i < flow.boxes.size(); ++i) {
        height += flow.boxes[i].height + flow.boxes[i].gap;
    }
    return height;
}

} // namespace

void add_panel(Flow& flow, const guide::Document& document, const Message& message,
               const Rich& after) {
    const double left = flow.left;
    const double width = flow.width;
    const double line = line_of(message.signal);
    const std::size_t first = flow.boxes.size();
    const bool own_group = flow.inner == 0;
    if (own_group) {
        begin_inner(flow);
    }
    open(flow, "Div");
    add_band(flow, document.language, message.signal);
    const std::size_t body = flow.boxes.size();
    const guide::Sign* sign = sign_of(document, message.sign);
    const double beside = sign == nullptr ? 0 : sign_side + 10;
    flow.left = left + line + pad + beside;
    flow.width = width - 2 * (line + pad) - beside;
    leave(flow, 5);
    const Rich head = about(document.language, message);
    if (!head.text.empty()) {
        add_text(flow, head, {});
        leave(flow, 2);
    }
    if (message.full_in_step == 0) {
        add_prose(flow, message.markdown);
    }
    if (!after.text.empty()) {
        leave(flow, 3);
        add_text(flow, after, {9});
    }
    const double missing = sign == nullptr ? 0 : sign_side + 5 - height_from(flow, body);
    add_box(flow, line + 5 + std::max(0.0, missing));
    close(flow);
    flow.left = left;
    flow.width = width;
    draw_frame(flow, first, left, width, message.signal);
    if (sign != nullptr) {
        flow.boxes[body].pieces.emplace_back(SignPiece{sign, left + line + pad, 5, sign_side});
    }
    if (own_group) {
        end_inner(flow);
    }
}

Shade begin_shade(Flow& flow) {
    const Shade shade{flow.boxes.size(), flow.left, flow.width};
    flow.left += pad;
    flow.width -= 2 * pad;
    add_box(flow, 5);
    return shade;
}

void end_shade(Flow& flow, const Shade& shade) {
    add_box(flow, 5);
    flow.left = shade.left;
    flow.width = shade.width;
    for (std::size_t i = shade.first; i < flow.boxes.size(); ++i) {
        Box& box = flow.boxes[i];
        if (i > shade.first) {
            absorb_gap(box);
        }
        // Slices that touch show a hair of white between them; a little overlap hides it.
        const double overlap = i + 1 < flow.boxes.size() ? 0.3 : 0;
        box.pieces.insert(box.pieces.begin(), Frame{shade.left, 0, shade.width,
                                                    box.height + overlap, 0, Ground::soft, false});
    }
}

const guide::Sign* sign_of(const guide::Document& document, const std::string& name) {
    const auto found =
        std::find_if(document.signs.begin(), document.signs.end(),
                     [&](const guide::Sign& one) { return !name.empty() && one.name == name; });
    return found == document.signs.end() ? nullptr : &*found;
}

} // namespace matchmark::publish
