// One step of a guide as a part of a page.
#include "publish/page_step.hpp"

#include "publish/facts.hpp"
#include "publish/page_picture.hpp"
#include "publish/page_safety.hpp"
#include "publish/page_text.hpp"
#include "publish/page_words.hpp"

#include <cmath>

namespace matchmark::publish {

namespace {

// A place to write in what was measured. With scripts on it becomes a field.
std::string place_to_write(const std::string& record) {
    return record.empty() ? ""
                          : "<p class=\"record\"><span class=\"asked\">" + escaped(record) +
                                "</span> <span class=\"blank\"></span></p>\n";
}

std::string instructions(const guide::Step& step) {
    if (step.instructions.empty()) {
        return {};
    }
    std::string text = "<ul class=\"do\">\n";
    for (const guide::Instruction& one : step.instructions) {
        const std::string tag = variant_tag(one.variants);
        text += "<li><div class=\"line\">" + tag + (tag.empty() ? "" : " ") + words(one.words) +
                "</div>\n";
        if (!one.details.empty()) {
            text += "<ul class=\"details\">\n";
            for (const guide::Words& detail : one.details) {
                text += "<li>" + words(detail) + "</li>\n";
            }
            text += "</ul>\n";
        }
        text += place_to_write(one.record) + "</li>\n";
    }
    return text + "</ul>\n";
}

std::string tools_and_time(const guide::Step& step) {
    std::string text;
    for (const Fact& fact : facts(step)) {
        text += "<span>" + escaped(fact.term) + ": <strong>" + escaped(fact.words) +
                "</strong></span> ";
    }
    return text.empty() ? "" : "<p class=\"facts\">" + text + "</p>\n";
}

std::string entry(const char* term, const std::vector<std::string>& values) {
    if (values.empty()) {
        return {};
    }
    std::string text = "<dt>" + std::string(term) + "</dt>\n<dd><ul>\n";
    for (const std::string& value : values) {
        text += "<li>" + escaped(value) + "</li>\n";
    }
    return text + "</ul></dd>\n";
}

std::string conditions(const guide::Test& test) {
    const std::string entries = entry("Do this test with", test.when) +
                                entry("Test equipment", test.with) +
                                entry("What it proves", test.proves);
    return entries.empty() ? "" : "<dl class=\"test\">\n" + entries + "</dl>\n";
}

std::string heading(const guide::Step& step) {
    const std::string tag = variant_tag(step.variants);
    return "<header><span class=\"ordinal\" aria-hidden=\"true\">" + std::to_string(step.number) +
           "</span>\n<h3 id=\"" + escaped(step.anchor) + "\"><span class=\"unseen\">Step " +
           std::to_string(step.number) + ": </span>" +
           (step.is_test ? "<span class=\"kind\">TEST</span>" : "") + escaped(step.title) +
           (tag.empty() ? "" : " " + tag) + "</h3></header>\n";
}

} // namespace

// Safety messages first, then what the device must be like, then the work, then what helps.
std::string step(const guide::Step& step, const PageContext& context) {
    std::string text = "<section class=\"step\" aria-labelledby=\"" + escaped(step.anchor) +
                       "\" data-seconds=\"" + std::to_string(std::lround(step.seconds)) + "\">\n";
    text += heading(step) + tools_and_time(step);
    for (const guide::Message& message : step.messages) {
        text += panel(context.document, message);
    }
    text += conditions(step.test) + instructions(step) + passages(step.passages);
    for (const guide::Picture& picture : step.pictures) {
        text += figure(picture, context.pictures);
    }
    return text + "</section>\n";
}

} // namespace matchmark::publish
