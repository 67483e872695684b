// The steps of a guide's PDF: safety messages, what the device must be like, the work, what helps.
#include "language/punctuation.hpp"
#include "publish/facts.hpp"
#include "publish/fixed_words.hpp"
#include "publish/paper/panel.hpp"
#include "publish/paper/pdf_parts.hpp"
#include "publish/paper/prose.hpp"

#include <algorithm>
#include <span>

namespace matchmark::publish {

namespace {

constexpr double ordinal_width = 36;
constexpr double act_tick_size = 9.5;

void add_step_heading(Flow& flow, const Language& in, const guide::Step& step, bool ruled) {
    Type number_type;
    number_type.size = 21;
    number_type.bold = true;
    Type title_type;
    title_type.size = 12.5;
    title_type.bold = true;
    Rich title;
    if (step.is_test) {
        Look look;
        look.boxed = true;
        add(title, "\u00a0");
        add(title, say(in, "TEST"), look);
        add(title, "\u00a0\u00a0");
    }
    add(title, step.title);
    add_variants(title, step.variants, in);
    constexpr double top = 2;
    Letters number = letters(flow, std::to_string(step.number), number_type, flow.left, top,
                             ordinal_width + 20, "Lbl");
    Letters words = letters(flow, title, title_type, flow.left + ordinal_width, top + 6.2,
                            flow.width - ordinal_width, "H3");
    Box& box =
        add_box(flow, std::max(top + number.setting->height, words.y + words.setting->height));
    box.pieces.emplace_back(
        Target{place_of_step(step.number), std::to_string(step.number) + "  " + step.title, 2});
    box.pieces.emplace_back(std::move(number));
    box.pieces.emplace_back(std::move(words));
    if (ruled) {
        Stroke rule{flow.left, -7, flow.left + flow.width, -7, 1.2};
        rule.parting = true;
        box.pieces.emplace_back(rule);
    }
    box.with_next = true;
}

void add_facts(Flow& flow, const Language& in, const guide::Step& step) {
    Rich rich;
    for (const Fact& fact : facts(step, in)) {
        add(rich, (rich.text.empty() ? "" : "   ") + fact.term + language::colon(in));
        add(rich, fact.words);
    }
    if (!rich.text.empty()) {
        leave(flow, 1);
        add_text(flow, rich, {9});
        flow.boxes.back().with_next = true;
    }
}

void add_conditions(Flow& flow, const Language& in, const guide::Test& test) {
    if (test.when.empty() && test.with.empty() && test.proves.empty()) {
        return;
    }
    leave(flow, 6);
    begin_inner(flow);
    const Shade shade = begin_shade(flow);
    const auto entry = [&](const char* term, const std::vector<std::string>& values) {
        if (values.empty()) {
            return;
        }
        leave(flow, 3);
        add_text(flow, say(in, term), {9});
        for (const std::string& value : values) {
            add_text(flow, "\u2022 " + value, {});
        }
    };
    entry("Do this test with", test.when);
    entry("Test equipment", test.with);
    entry("What it proves", test.proves);
    end_shade(flow, shade);
    end_inner(flow);
}

// A line to write on, after what is to be written there.
void add_record(Flow& flow, const Language& in, const std::string& record) {
    constexpr double line = 110;
    leave(flow, 3);
    Letters words = letters(flow, say_with(in, "Write down: {what}", "what", record), {9},
                            flow.left, 5, flow.width - line - 8, "P");
    Box& box = add_box(flow, words.setting->height + 7);
    const double x = flow.left + words.setting->width + 6;
    const double y = box.height - 3;
    box.pieces.emplace_back(std::move(words));
    box.pieces.emplace_back(Stroke{x, y, x + line, y, 0.7});
}

void add_act_list(Flow& flow, const Language& in,
                  std::span<const guide::Instruction> instructions) {
    constexpr double by = 19;
    const double left = flow.left;
    flow.left += by;
    flow.width -= by;
    leave(flow, 6);
    open(flow, "L");
    for (const guide::Instruction& one : instructions) {
        Rich rich;
        add_variants(rich, one.variants, in);
        add(rich, one.variants.empty() ? "" : "\u00a0\u00a0");
        add(rich, one.words);
        begin_inner(flow);
        open(flow, "LI");
        add_tick(flow, add_text(flow, rich, {}), left, act_tick_size);
        for (const guide::Words& detail : one.details) {
            Rich more;
            add(more, detail);
            leave(flow, 1.5);
            add_text(flow, more, {9});
        }
        if (!one.record.empty()) {
            add_record(flow, in, one.record);
        }
        close(flow);
        end_inner(flow);
        leave(flow, 4.5);
    }
    close(flow);
    flow.left = left;
    flow.width += by;
}

void add_words(Flow& flow, const Language& in, const std::vector<guide::Passage>& passages) {
    if (!passages.empty()) {
        leave(flow, 6);
        add_passages(flow, in, passages);
    }
}

// The actions in lists, broken where the author has something to say between two.
void add_instructions(Flow& flow, const Language& in, const guide::Step& step) {
    add_words(flow, in, guide::passages_after(step, 0));
    for (std::size_t i = 0; i < step.instructions.size();) {
        const std::size_t begin = i;
        while (i < step.instructions.size() &&
               (i == begin || guide::passages_after(step, i).empty())) {
            ++i;
        }
        add_act_list(flow, in, std::span(step.instructions).subspan(begin, i - begin));
        add_words(flow, in, guide::passages_after(step, i));
    }
}

void add_step(Leaflet& leaflet, const guide::Step& step, bool ruled) {
    Flow& flow = leaflet.flow;
    leave(flow, ruled ? 20 : 0);
    begin_outer(flow);
    open(flow, "Sect");
    const Language& in = leaflet.document.language;
    add_step_heading(flow, in, step, ruled);
    flow.left += ordinal_width;
    flow.width -= ordinal_width;
    add_facts(flow, in, step);
    for (const guide::Message& message : step.messages) {
        leave(flow, 7);
        add_panel(flow, leaflet.document, message);
    }
    add_conditions(flow, in, step.test);
    add_instructions(flow, in, step);
    leave(flow, 6);
    for (const guide::Picture& picture : step.pictures) {
        add_picture(leaflet, picture);
    }
    flow.left -= ordinal_width;
    flow.width += ordinal_width;
    close(flow);
    end_outer(flow);
}

} // namespace

void add_sections(Leaflet& leaflet) {
    const auto& sections = leaflet.document.sections;
    for (std::size_t i = 0; i < sections.size(); ++i) {
        if (sections[i].steps.empty()) {
            continue;
        }
        open(leaflet.flow, "Sect");
        add_heading(leaflet, "section-" + std::to_string(i + 1));
        bool ruled = false;
        for (const guide::Step& step : sections[i].steps) {
            add_step(leaflet, step, ruled);
            ruled = true;
        }
        close(leaflet.flow);
    }
}

} // namespace matchmark::publish
