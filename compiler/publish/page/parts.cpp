// The parts of a page in the order in which a reader needs them.
#include "publish/page/parts.hpp"

#include "publish/digest.hpp"
#include "publish/facts.hpp"
#include "publish/fixed_words.hpp"
#include "publish/page/needs.hpp"
#include "publish/page/picture.hpp"
#include "publish/page/safety.hpp"
#include "publish/page/step.hpp"
#include "publish/page/text.hpp"
#include "publish/page/words.hpp"
#include "source/markup.hpp"

namespace matchmark::publish {

using guide::Document;

namespace {

std::string title_block(const Document& document) {
    std::string fields;
    for (const Fact& fact : facts(document)) {
        fields += "<div><dt>" + markup_escaped(fact.term) + "</dt><dd>" +
                  markup_escaped(fact.words) + "</dd></div>\n";
    }
    return "<header class=\"block\">\n<h1>" + markup_escaped(document.title) + "</h1>\n" +
           (fields.empty() ? "" : "<dl>\n" + fields + "</dl>\n") + "</header>\n";
}

std::string opening(const PageContext& context) {
    const Document& document = context.document;
    std::string text = "<p><strong>" + markup_escaped(document.reader) + "</strong></p>\n<p>" +
                       markup_escaped(document.deferral) + "</p>\n";
    text += passages(document.passages, document.language) +
            listed("The aim", document.goals, document.language);
    for (const guide::Picture& picture : document.pictures) {
        text += figure(picture, context.pictures, document.language);
    }
    return text;
}

std::string part_entry(const std::string& anchor, const std::string& title,
                       const std::string& more) {
    return "<li><a href=\"#" + anchor + "\">" + markup_escaped(title) + "</a>" +
           (more.empty() ? "" : ", " + more) + "</li>\n";
}

struct Parts {
    std::string safety;
    std::string needs;
    std::string drawings;
    std::string afterwards;
};

std::string contents(const Document& document, const Parts& parts) {
    const Language& in = document.language;
    std::string text;
    text += parts.safety.empty() ? "" : part_entry("safety", say(in, "Safety first"), "");
    text += parts.needs.empty() ? "" : part_entry("needs", say(in, "What you need"), "");
    for (std::size_t i = 0; i < document.sections.size(); ++i) {
        const guide::Section& section = document.sections[i];
        if (!section.steps.empty()) {
            text += part_entry("section-" + std::to_string(i + 1), section.title,
                               markup_escaped(step_range(section, in)));
        }
    }
    text += parts.afterwards.empty() ? "" : part_entry("afterwards", say(in, "Afterwards"), "");
    text += parts.drawings.empty() ? "" : part_entry("drawings", say(in, "Drawings"), "");
    return text.empty()
               ? text
               : "<nav class=\"contents\" aria-label=\"" + markup_escaped(say(in, "Contents")) +
                     "\">\n<ol>\n" + text + "</ol>\n</nav>\n";
}

std::string section(const guide::Section& section, std::size_t number, const PageContext& context) {
    const std::string id = "section-" + std::to_string(number);
    std::string text = "<section aria-labelledby=\"" + id + "\">\n<h2 id=\"" + id + "\">" +
                       markup_escaped(section.title) + "</h2>\n";
    for (const guide::Step& one : section.steps) {
        text += step(one, context);
    }
    return text + "</section>\n";
}

} // namespace

std::string page_head(const std::string& title, std::string_view style, std::string_view script,
                      const Language& in) {
    const std::string policy =
        "default-src 'none'; style-src 'unsafe-inline'; img-src data:; script-src 'sha256-" +
        base64(sha256(script)) + "'; base-uri 'none'; form-action 'none'";
    return "<!DOCTYPE html>\n<html lang=\"" + in.tag +
           "\">\n<head>\n<meta charset=\"utf-8\">\n"
           "<meta http-equiv=\"Content-Security-Policy\" content=\"" +
           policy +
           "\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
           "<meta name=\"referrer\" content=\"no-referrer\">\n<title>" +
           without_controls(title) + "</title>\n<style>" + std::string(style) +
           "</style>\n</head>\n";
}

std::string page_body(const PageContext& context, const std::string& drawings) {
    const Document& document = context.document;
    const Parts parts{safety_first(document), needs(document), drawings, afterwards(document)};
    std::string page = title_block(document) + "<main>\n" + opening(context) +
                       contents(document, parts) + parts.safety + parts.needs +
                       "<div id=\"work\">\n";
    for (std::size_t i = 0; i < document.sections.size(); ++i) {
        page += section(document.sections[i], i + 1, context);
    }
    return page + "</div>\n" + parts.afterwards + parts.drawings + "</main>\n";
}

} // namespace matchmark::publish
