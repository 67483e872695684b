// One step of a guide as a part of a page.
#include "publish/page/step.hpp"

#include "language/punctuation.hpp"
#include "publish/facts.hpp"
#include "publish/fixed_words.hpp"
#include "publish/page/picture.hpp"
#include "publish/page/safety.hpp"
#include "publish/page/text.hpp"
#include "publish/page/words.hpp"
#include "source/markup.hpp"

#include <cmath>

namespace matchmark::publish {

namespace {

// A place to write in what was measured. With scripts on it becomes a field.
std::string place_to_write(const std::string& record) {
    return record.empty() ? ""
                          : "<p class=\"record\"><span class=\"asked\">" + markup_escaped(record) +
                                "</span> <span class=\"blank\"></span></p>\n";
}

// The actions in lists, broken where the author has something to say between two.
std::string instructions(const guide::Step& step, const Language& in) {
    std::string text = passages(guide::passages_after(step, 0), in);
    bool in_list = false;
    for (std::size_t i = 0; i < step.instructions.size(); ++i) {
        const guide::Instruction& one = step.instructions[i];
        text += in_list ? "" : "<ul class=\"do\">\n";
        const std::string tag = variant_tag(one.variants, in);
        text += "<li><div class=\"line\">" + tag + (tag.empty() ? "" : " ") + words(one.words, in) +
                "</div>\n";
        if (!one.details.empty()) {
            text += "<ul class=\"details\">\n";
            for (const guide::Words& detail : one.details) {
                text += "<li>" + words(detail, in) + "</li>\n";
            }
            text += "</ul>\n";
        }
        text += place_to_write(one.record) + "</li>\n";
        const std::string below = passages(guide::passages_after(step, i + 1), in);
        in_list = below.empty() && i + 1 < step.instructions.size();
        text += (in_list ? "" : "</ul>\n") + below;
    }
    return text;
}

std::string tools_and_time(const guide::Step& step, const Language& in) {
    std::string text;
    for (const Fact& fact : facts(step, in)) {
        text += "<span>" + markup_escaped(fact.term) + language::colon(in) + "<strong>" +
                markup_escaped(fact.words) + "</strong></span> ";
    }
    return text.empty() ? "" : "<p class=\"facts\">" + text + "</p>\n";
}

std::string entry(const Language& in, const char* term, const std::vector<std::string>& values) {
    if (values.empty()) {
        return {};
    }
    std::string text = "<dt>" + markup_escaped(say(in, term)) + "</dt>\n<dd><ul>\n";
    for (const std::string& value : values) {
        text += "<li>" + markup_escaped(value) + "</li>\n";
    }
    return text + "</ul></dd>\n";
}

std::string conditions(const guide::Test& test, const Language& in) {
    const std::string entries = entry(in, "Do this test with", test.when) +
                                entry(in, "Test equipment", test.with) +
                                entry(in, "What it proves", test.proves);
    return entries.empty() ? "" : "<dl class=\"test\">\n" + entries + "</dl>\n";
}

std::string heading(const guide::Step& step, const Language& in) {
    const std::string tag = variant_tag(step.variants, in);
    return "<header><span class=\"ordinal\" aria-hidden=\"true\">" + std::to_string(step.number) +
           "</span>\n<h3 id=\"" + markup_escaped(step.anchor) + "\"><span class=\"unseen\">" +
           markup_escaped(say_with(in, "Step {step}:", "step", std::to_string(step.number))) +
           " </span>" +
           (step.is_test ? "<span class=\"kind\">" + markup_escaped(say(in, "TEST")) + "</span>"
                         : "") +
           markup_escaped(step.title) + (tag.empty() ? "" : " " + tag) + "</h3></header>\n";
}

} // namespace

// Safety messages first, then what the device must be like, then the work, then what helps.
std::string step(const guide::Step& step, const PageContext& context) {
    const Language& in = context.document.language;
    std::string text = "<section class=\"step\" aria-labelledby=\"" + markup_escaped(step.anchor) +
                       "\" data-seconds=\"" + std::to_string(std::lround(step.seconds)) + "\">\n";
    text += heading(step, in) + tools_and_time(step, in);
    for (const guide::Message& message : step.messages) {
        text += panel(context.document, message);
    }
    text += conditions(step.test, in) + instructions(step, in);
    for (const guide::Picture& picture : step.pictures) {
        text += figure(picture, context.pictures, in);
    }
    return text + "</section>\n";
}

} // namespace matchmark::publish
