// The guide as one page of HTML: to read on a screen at the bench, or to print.
#include "publish/html.hpp"

#include "model/describe.hpp"
#include "publish/page_picture.hpp"
#include "publish/page_safety.hpp"
#include "publish/page_step.hpp"
#include "publish/page_style.hpp"
#include "publish/page_text.hpp"

#include <algorithm>

namespace matchmark::publish {

using guide::Document;
using guide::Provision;

namespace {

// Nothing may be loaded and nothing may run, whatever an author or a picture brings with it.
constexpr const char* head =
    "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
    "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src "
    "'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'\">\n"
    "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
    "<meta name=\"referrer\" content=\"no-referrer\">\n";

std::string field(const char* term, const std::string& value) {
    if (value.empty()) {
        return {};
    }
    return "<div><dt>" + std::string(term) + "</dt><dd>" + escaped(value) + "</dd></div>\n";
}

// What the title block of a drawing says: of what, which issue, by whom.
std::string title_block(const Document& document) {
    const std::string fields =
        field("Equipment", document.device) + field("Its revision", document.device_revision) +
        field("Only for", model::list(document.variants)) +
        field("Guide revision", document.revision) + field("Date", document.date) +
        field("Author", document.author) + field("Handling alone", document.time);
    return "<header class=\"block\">\n<h1>" + escaped(document.title) + "</h1>\n" +
           (fields.empty() ? "" : "<dl>\n" + fields + "</dl>\n") + "</header>\n";
}

std::string opening(const Document& document, const guide::Assets& assets) {
    std::string text = "<p><strong>" + escaped(document.reader) + "</strong></p>\n<p>" +
                       escaped(document.deferral) + "</p>\n";
    text += passages(document.passages);
    if (!document.goals.empty()) {
        text += "<p class=\"label\">The aim</p>\n<ul>\n";
        for (const guide::Words& goal : document.goals) {
            text += "<li>" + words(goal) + "</li>\n";
        }
        text += "</ul>\n";
    }
    for (const guide::Picture& picture : document.pictures) {
        text += figure(picture, assets);
    }
    return text;
}

std::string contents(const Document& document) {
    std::string text;
    for (std::size_t i = 0; i < document.sections.size(); ++i) {
        const guide::Section& section = document.sections[i];
        if (section.steps.empty()) {
            continue;
        }
        const std::string first = std::to_string(section.steps.front().number);
        const std::string last = std::to_string(section.steps.back().number);
        text += "<li><a href=\"#section-" + std::to_string(i + 1) + "\">" + escaped(section.title) +
                "</a>, " + (first == last ? "step " + first : "steps " + first + " to " + last) +
                "</li>\n";
    }
    return text.empty() ? text : "<nav aria-label=\"Contents\">\n<ol>\n" + text + "</ol>\n</nav>\n";
}

std::string provision_rows(const std::vector<Provision>& provisions) {
    std::string text;
    for (const Provision& provision : provisions) {
        const std::string purpose =
            provision.purpose.empty() ? "" : ", " + escaped(provision.purpose);
        text += "<tr><th scope=\"row\">" + escaped(provision.words) + purpose +
                "</th><td class=\"amount\">" + escaped(provision.amount) +
                "</td><td class=\"amount\">" + escaped(provision.price) + "</td></tr>\n";
    }
    return text;
}

std::string provision_table(const Document& document) {
    const std::string rows = provision_rows(document.spares) + provision_rows(document.supplies);
    if (rows.empty()) {
        return {};
    }
    std::string text =
        "<table class=\"keep\">\n<caption>Spares and supplies</caption>\n<thead>"
        "<tr><th scope=\"col\">What</th><th scope=\"col\" class=\"amount\">Amount"
        "</th><th scope=\"col\" class=\"amount\">Price</th></tr></thead>\n<tbody>\n" +
        rows + "</tbody>\n";
    if (!document.cost.empty()) {
        text += "<tfoot><tr><th scope=\"row\" colspan=\"2\">Together</th><td class=\"amount\">" +
                escaped(model::list(document.cost)) + "</td></tr></tfoot>\n";
    }
    return text + "</table>\n";
}

std::string fastener_table(const Document& document) {
    std::string rows;
    for (const guide::FastenerRow& row : document.fasteners) {
        const std::string told = row.told_by.empty() ? "" : ", told by " + escaped(row.told_by);
        const std::string tag = variant_tag(row.variants);
        rows += "<tr><th scope=\"row\">" + escaped(row.words) + (tag.empty() ? "" : " " + tag) +
                "</th><td>" + escaped(row.description) + told + "</td><td class=\"amount\">" +
                escaped(row.torque) + "</td></tr>\n";
    }
    if (rows.empty()) {
        return {};
    }
    // A short table stays on one printed page.
    const std::string open = document.fasteners.size() <= 12 ? "<table class=\"keep\">" : "<table>";
    return open +
           "\n<caption>Fasteners that you will handle</caption>\n<thead><tr>"
           "<th scope=\"col\">Which</th><th scope=\"col\">What it is</th><th scope=\"col\" "
           "class=\"amount\">Torque</th></tr></thead>\n<tbody>\n" +
           rows + "</tbody>\n</table>\n";
}

std::string needs(const Document& document) {
    std::string text;
    if (!document.tools.empty()) {
        text += "<p class=\"label\"><strong>Tools</strong></p>\n<ul class=\"do\">\n";
        for (const Provision& tool : document.tools) {
            const std::string amount = tool.amount.empty() ? "" : ", " + escaped(tool.amount);
            const std::string price = tool.price.empty() ? "" : ", " + escaped(tool.price);
            text += "<li>" + escaped(tool.words) + amount + price + "</li>\n";
        }
        text += "</ul>\n";
    }
    text += provision_table(document) + fastener_table(document);
    if (text.empty()) {
        return {};
    }
    return "<section aria-labelledby=\"needs\">\n<h2 id=\"needs\">What you need</h2>\n" + text +
           "</section>\n";
}

std::string section(const guide::Section& section, std::size_t number,
                    const guide::Assets& assets) {
    const std::string id = "section-" + std::to_string(number);
    std::string text = "<section aria-labelledby=\"" + id + "\">\n<h2 id=\"" + id + "\">" +
                       escaped(section.title) + "</h2>\n";
    for (const guide::Step& one : section.steps) {
        text += step(one, assets);
    }
    return text + "</section>\n";
}

std::string afterwards(const Document& document) {
    if (document.disposals.empty()) {
        return {};
    }
    std::string text = "<section class=\"keep\" aria-labelledby=\"afterwards\">\n"
                       "<h2 id=\"afterwards\">Afterwards</h2>\n<p>These go to a collecting point "
                       "under the rules of your country:</p>\n<ul class=\"do\">\n";
    for (const guide::Disposal& disposal : document.disposals) {
        text += "<li>" + escaped(disposal.words) + ": <strong>" + escaped(disposal.waste_class) +
                "</strong></li>\n";
    }
    return text + "</ul>\n</section>\n";
}

} // namespace

std::string html(const Document& document, const guide::Assets& assets) {
    const std::string device = document.device.empty() ? "" : ": " + document.device;
    std::string page = head;
    page += "<title>" + escaped(document.title + device) + "</title>\n<style>" + page_style +
            "</style>\n</head>\n<body>\n<div class=\"sheet\">\n"
            "<a class=\"skip\" href=\"#work\">To the steps</a>\n";
    page += title_block(document) + "<main>\n" + opening(document, assets) + contents(document) +
            safety_first(document) + needs(document) + "<div id=\"work\">\n";
    for (std::size_t i = 0; i < document.sections.size(); ++i) {
        page += section(document.sections[i], i + 1, assets);
    }
    page += "</div>\n" + afterwards(document) + "</main>\n<footer>\n<p>" +
            escaped(document.title + device) + "</p>\n</footer>\n</div>\n</body>\n</html>\n";
    return without_controls(page);
}

} // namespace matchmark::publish
