// One step of a guide as a part of a page.
#include "publish/page_step.hpp"

#include "guide/prose.hpp"
#include "publish/page_picture.hpp"
#include "publish/page_safety.hpp"
#include "publish/page_text.hpp"

namespace matchmark::publish {

namespace {

std::string instructions(const guide::Step& step) {
    if (step.instructions.empty()) {
        return {};
    }
    std::string text = "<ul class=\"do\">\n";
    for (const guide::Instruction& one : step.instructions) {
        const std::string tag = variant_tag(one.variants);
        text += "<li>" + tag + (tag.empty() ? "" : " ") + words(one.words) + "</li>\n";
    }
    return text + "</ul>\n";
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

std::string words(const guide::Words& words) {
    std::string text;
    for (const guide::Run& run : words) {
        switch (run.kind) {
        case guide::RunKind::words:
            text += escaped(run.text);
            break;
        case guide::RunKind::value:
            text += "<strong class=\"value\">" + escaped(run.text) + "</strong>";
            break;
        case guide::RunKind::item_number:
            text += " <span class=\"number\"><span class=\"unseen\">number </span>" +
                    escaped(run.text) + "</span>";
            break;
        }
    }
    return text;
}

std::string passages(const std::vector<guide::Passage>& passages) {
    std::string text;
    for (const guide::Passage& passage : passages) {
        const std::string body = guide::prose_html(passage.markdown);
        switch (passage.kind) {
        case guide::PassageKind::text:
            text += body;
            break;
        case guide::PassageKind::note:
            text += "<div class=\"note\">\n<p class=\"label\">Note</p>\n" + body + "</div>\n";
            break;
        case guide::PassageKind::why:
            text += "<div class=\"note\">\n<p class=\"label\">Reason</p>\n" + body + "</div>\n";
            break;
        }
    }
    return text;
}

// Safety messages first, then what the device must be like, then the work, then what helps.
std::string step(const guide::Step& step, const guide::Assets& assets) {
    std::string text =
        "<section class=\"step\" aria-labelledby=\"" + escaped(step.anchor) + "\">\n";
    text += heading(step);
    for (const guide::Message& message : step.messages) {
        text += panel(message);
    }
    text += conditions(step.test) + instructions(step) + passages(step.passages);
    for (const guide::Picture& picture : step.pictures) {
        text += figure(picture, assets);
    }
    return text + "</section>\n";
}

} // namespace matchmark::publish
