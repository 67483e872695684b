// The bench sheet as a PDF.
#include "language/punctuation.hpp"
#include "publish/facts.hpp"
#include "publish/fixed_words.hpp"
#include "publish/paper/print.hpp"
#include "publish/paper/symbol.hpp"
#include "publish/sheet.hpp"
#include "publish/sheet_lines.hpp"

#include <algorithm>

namespace matchmark::publish {

namespace {

constexpr Margins sheet_margins{42, 48, 44};
constexpr double body_size = 10;
constexpr double number_width = 22;
constexpr double writing_width = 128;
constexpr double tick_size = 9;

Type type_of(double size, bool bold = false) {
    Type type;
    type.size = size;
    type.bold = bold;
    return type;
}

void add_title(Flow& flow, const guide::Document& document) {
    add_text(flow, document.title, type_of(16, true), "H1");
    flow.boxes.back().pieces.emplace_back(
        Target{"sheet", say(document.language, "Bench sheet"), 1});
    Rich rich;
    for (const Fact& fact : facts(document)) {
        Look bold;
        bold.bold = true;
        add(rich,
            (rich.text.empty() ? "" : "   ") + fact.term + language::colon(document.language));
        add(rich, fact.words, bold);
    }
    leave(flow, 3);
    if (!rich.text.empty()) {
        add_text(flow, rich, type_of(8));
    }
    leave(flow, 3);
    if (!document.deferral.empty()) {
        add_text(flow, document.deferral, type_of(8));
    }
}

// Three frames to write in.
void add_fields(Flow& flow, const Language& in) {
    constexpr double height = 32;
    leave(flow, 6);
    Box& box = add_box(flow, height);
    const double width = flow.width / static_cast<double>(std::size(sheet_fields));
    double x = flow.left;
    for (const char* field : sheet_fields) {
        box.pieces.emplace_back(Frame{x, 0, width, height, 0.8});
        box.pieces.emplace_back(
            letters(flow, say(in, field), type_of(8), x + 4, 2, width - 8, "P"));
        x += width;
    }
    leave(flow, 8);
}

double bar_of(guide::Signal signal) {
    switch (signal) {
    case guide::Signal::danger:
        return 5;
    case guide::Signal::warning:
        return 3.5;
    case guide::Signal::caution:
        return 2;
    case guide::Signal::notice:
        break;
    }
    return 0.8;
}

// A bar at the left, the signal word, the message; it keeps to the line that it is about.
void add_message(Flow& flow, const Language& in, const guide::Message& message) {
    const bool notice = message.signal == guide::Signal::notice;
    const double left = flow.left;
    const double by = notice ? 10 : 24;
    Rich rich;
    Look bold;
    bold.bold = true;
    Look slanted;
    slanted.bold = true;
    slanted.italic = true;
    add(rich, guide::signal_word(message.signal, in), notice ? slanted : bold);
    add_variants(rich, message.variants, in);
    add(rich, "  ");
    add(rich, message.subject, bold);
    const std::string text = message_text(message, in);
    add(rich, (message.subject.empty() || text.empty() ? "" : ". ") + text);
    flow.left += by;
    flow.width -= by;
    leave(flow, 3);
    const std::size_t first = add_text(flow, rich, type_of(9));
    flow.left = left;
    flow.width += by;
    for (std::size_t i = first; i < flow.boxes.size(); ++i) {
        Box& box = flow.boxes[i];
        const double x = left + 3;
        box.pieces.emplace_back(Stroke{x, 0, x, box.height, bar_of(message.signal), notice});
        box.with_next = i + 1 == flow.boxes.size();
    }
    if (!notice) {
        flow.boxes[first].pieces.emplace_back(Alert{left + 9, 0.8, 9.5});
    }
    leave(flow, 3);
}

// It keeps to the line that it is about.
void add_note(Flow& flow, const std::string& note) {
    constexpr double by = 10;
    flow.left += by;
    flow.width -= by;
    leave(flow, 1);
    const std::size_t first = add_text(flow, note, type_of(8));
    flow.left -= by;
    flow.width += by;
    for (std::size_t i = first; i < flow.boxes.size(); ++i) {
        flow.boxes[i].with_next = true;
    }
    leave(flow, 1);
}

// One line: the box, the action, and the space to write in.
void add_line(Flow& flow, const Rich& action, const std::vector<Rich>& details,
              const Writing& writing) {
    const double right = flow.left + flow.width;
    const double x = flow.left + number_width;
    const double width = flow.width - number_width - (writing.wanted ? writing_width + 10 : 0);
    std::vector<Letters> pieces;
    open(flow, "LI");
    pieces.push_back(letters(flow, action, type_of(body_size), x, 3, width, "P"));
    double height = 3 + pieces.back().setting->height;
    for (const Rich& detail : details) {
        pieces.push_back(letters(flow, detail, type_of(8), x, height, width, "P"));
        height += pieces.back().setting->height;
    }
    double line = 17; // the lower edge of the frame to write in
    if (writing.wanted && !writing.what.empty()) {
        pieces.push_back(
            letters(flow, writing.what, type_of(8), right - writing_width, 2, writing_width, "P"));
        line = pieces.back().setting->height + 18;
    }
    height = std::max(height, writing.wanted ? line : 0) + 3;
    Box& box = add_box(flow, height);
    close(flow);
    for (Letters& piece : pieces) {
        box.pieces.emplace_back(std::move(piece));
    }
    box.pieces.emplace_back(Frame{flow.left + 3, 4, tick_size, tick_size, 0.9});
    if (writing.wanted) {
        box.pieces.emplace_back(Frame{right - writing_width, line - 15, writing_width, 15, 0.7});
    }
    box.pieces.emplace_back(Stroke{flow.left, height, right, height, 0.3, false, true});
}

void add_instruction(Flow& flow, const Language& in, const guide::Instruction& one) {
    Rich action;
    add_variants(action, one.variants, in);
    add(action, one.variants.empty() ? "" : "\u00a0\u00a0");
    add(action, one.words);
    std::vector<Rich> details;
    for (const guide::Words& words : one.details) {
        add(details.emplace_back(), words);
    }
    add_line(flow, action, details, writing_for(one));
}

void add_step(Flow& flow, const Language& in, const guide::Step& step) {
    begin_outer(flow);
    open(flow, "Sect");
    Rich title;
    add(title, std::to_string(step.number) + "\u00a0\u00a0" +
                   (step.is_test ? say(in, "TEST") + "\u00a0\u00a0" : ""));
    add(title, step.title);
    add_variants(title, step.variants, in);
    leave(flow, 6);
    add_text(flow, title, type_of(10, true), "H3");
    Box& heading = flow.boxes.back();
    heading.pieces.emplace_back(
        Target{place_of_step(step.number), std::to_string(step.number) + "  " + step.title, 2});
    heading.with_next = true;
    for (const guide::Message& message : step.messages) {
        add_message(flow, in, message);
    }
    for (const std::string& note : notes_of(step, in)) {
        add_note(flow, note);
    }
    open(flow, "L");
    for (const guide::Instruction& one : step.instructions) {
        add_instruction(flow, in, one);
    }
    const std::string test = test_text(step.test, in);
    if (!test.empty() || step.instructions.empty()) {
        Rich line;
        add(line, (step.is_test ? say(in, "Passed.") : say(in, "Done.")) + " ");
        add(line, test);
        add_line(flow, line, {}, {step.is_test, {}});
    }
    close(flow);
    close(flow);
    end_outer(flow);
}

} // namespace

std::string sheet_pdf(const guide::Document& document, Paper paper, const std::string& created) {
    Printer printer = printer_for(paper, sheet_margins, document.language.tag);
    const Language& in = document.language;
    Flow flow = flow_for(printer);
    add_title(flow, document);
    add_fields(flow, in);
    const std::string gear = gear_line(document);
    if (!gear.empty()) {
        add_text(flow, gear, type_of(body_size, true));
        leave(flow, 4);
    }
    for (const guide::Message* message : whole_work(document)) {
        add_message(flow, in, *message);
        flow.boxes.back().with_next = false;
    }
    for (std::size_t i = 0; i < document.sections.size(); ++i) {
        const guide::Section& section = document.sections[i];
        if (section.steps.empty()) {
            continue;
        }
        leave(flow, 10);
        add_text(flow, section.title, type_of(12, true), "H2");
        Box& box = flow.boxes.back();
        box.pieces.emplace_back(Target{"section-" + std::to_string(i + 1), section.title, 1});
        box.pieces.emplace_back(Stroke{flow.left, -2, flow.left + flow.width, -2, 1.6});
        box.with_next = true;
        for (const guide::Step& step : section.steps) {
            add_step(flow, in, step);
        }
    }
    const std::string title = say_with(
        in, "Bench sheet: {title}", "title",
        document.title + (document.device.empty() ? "" : language::colon(in) + document.device));
    const std::string revision =
        document.revision.empty()
            ? ""
            : say_with(in, "revision {value}", "value", document.revision) + "  \u00b7  ";
    return print(printer, flow.boxes,
                 {title, document.author, document.device, created, document.date, title,
                  revision + document.name, in.tag, say(in, "page {page} of {pages}")});
}

} // namespace matchmark::publish
