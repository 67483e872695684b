// What is needed for the work, and what is left of it, as parts of a page.
#include "publish/page/needs.hpp"

#include "language/punctuation.hpp"
#include "publish/facts.hpp"
#include "publish/fixed_words.hpp"
#include "publish/page/safety.hpp"
#include "publish/page/sign.hpp"
#include "publish/page/text.hpp"
#include "publish/page/words.hpp"
#include "source/markup.hpp"

namespace matchmark::publish {

using guide::Document;
using guide::Provision;

namespace {

std::string provision_rows(const std::vector<Provision>& provisions) {
    std::string text;
    for (const Provision& provision : provisions) {
        const std::string purpose =
            provision.purpose.empty() ? "" : ", " + markup_escaped(provision.purpose);
        text += "<tr><th scope=\"row\">" + markup_escaped(provision.words) + purpose +
                "</th><td class=\"amount\">" + markup_escaped(provision.amount) +
                "</td><td class=\"amount\">" + markup_escaped(provision.price) + "</td></tr>\n";
    }
    return text;
}

std::string provision_table(const Document& document) {
    const Language& in = document.language;
    const std::string rows = provision_rows(document.spares) + provision_rows(document.supplies);
    if (rows.empty()) {
        return {};
    }
    std::string text =
        "<table class=\"keep\">\n<caption>" + markup_escaped(say(in, "Spares and supplies")) +
        "</caption>\n<thead><tr><th scope=\"col\">" + markup_escaped(say(in, "What")) +
        "</th><th scope=\"col\" class=\"amount\">" + markup_escaped(say(in, "Amount")) +
        "</th><th scope=\"col\" class=\"amount\">" + markup_escaped(say(in, "Price")) +
        "</th></tr></thead>\n<tbody>\n" + rows + "</tbody>\n";
    if (!document.cost.empty()) {
        text += "<tfoot><tr><th scope=\"row\" colspan=\"2\">" +
                markup_escaped(sum_words(document)) + "</th><td class=\"amount\">" +
                markup_escaped(language::said_list(in, document.cost)) + "</td></tr></tfoot>\n";
    }
    return text + "</table>\n";
}

// A number stays with its unit; a line may only end behind a comma.
std::string kept_together(const std::string& words) {
    std::string kept;
    for (std::size_t at = 0; at < words.size(); ++at) {
        const bool may_end = words[at] == ' ' && at > 0 && words[at - 1] == ',';
        if (words[at] == ' ' && !may_end) {
            kept += "\u00A0";
        } else {
            kept += words[at];
        }
    }
    return kept;
}

std::string fastener_table(const Document& document) {
    const Language& in = document.language;
    std::string rows;
    for (const guide::FastenerRow& row : document.fasteners) {
        const std::string told =
            row.told_by.empty()
                ? ""
                : ", " + markup_escaped(say_with(in, "told by {what}", "what", row.told_by));
        const std::string tag = variant_tag(row.variants, in);
        rows += "<tr><th scope=\"row\">" + markup_escaped(row.words) +
                (tag.empty() ? "" : " " + tag) + "</th><td>" + markup_escaped(row.description) +
                told + "</td><td class=\"amount torque\">" +
                kept_together(markup_escaped(row.torque)) + "</td></tr>\n";
    }
    if (rows.empty()) {
        return {};
    }
    // A short table stays on one printed page.
    const std::string open = document.fasteners.size() <= 12 ? "<table class=\"keep\">" : "<table>";
    return open + "\n<caption>" + markup_escaped(say(in, "Fasteners that you will handle")) +
           "</caption>\n<thead><tr><th scope=\"col\">" + markup_escaped(say(in, "Which")) +
           "</th><th scope=\"col\">" + markup_escaped(say(in, "What it is")) +
           "</th><th scope=\"col\" class=\"amount\">" + markup_escaped(say(in, "Torque")) +
           "</th></tr></thead>\n<tbody>\n" + rows + "</tbody>\n</table>\n";
}

std::string boxes(const char* label, const Document& document,
                  const std::vector<Provision>& provisions) {
    if (provisions.empty()) {
        return {};
    }
    std::string text = "<p class=\"label\"><strong>" +
                       markup_escaped(say(document.language, label)) +
                       "</strong></p>\n<ul class=\"do provided\">\n";
    for (const Provision& one : provisions) {
        std::string line = markup_escaped(one.words);
        for (const std::string& more : {one.amount, one.price, one.purpose}) {
            line += more.empty() ? "" : ", " + markup_escaped(more);
        }
        line += one.tool_class.empty()
                    ? ""
                    : " <span class=\"variant\">" + markup_escaped(one.tool_class) + "</span>";
        const std::string shown = sign(document, one.sign);
        text += "<li><div class=\"line\">" + shown + (shown.empty() ? "" : " ") + line +
                "</div></li>\n";
    }
    return text + "</ul>\n";
}

} // namespace

std::string needs(const Document& document) {
    const std::string text = boxes("To wear", document, document.protection) +
                             boxes("Tools", document, document.tools) + provision_table(document) +
                             fastener_table(document);
    if (text.empty()) {
        return {};
    }
    return "<section aria-labelledby=\"needs\">\n<h2 id=\"needs\">" +
           markup_escaped(say(document.language, "What you need")) + "</h2>\n" + text +
           "</section>\n";
}

std::string afterwards(const Document& document) {
    std::string text =
        listed("What this work voids, and what restores it", document.ratings, document.language);
    if (!document.disposals.empty()) {
        text +=
            "<p>" +
            markup_escaped(say(document.language,
                               "These go to a collecting point under the rules of your country:")) +
            "</p>\n<ul class=\"do\">\n";
        for (const guide::Disposal& disposal : document.disposals) {
            text += "<li><div class=\"line\">" + markup_escaped(disposal.words) +
                    language::colon(document.language) + "<strong>" +
                    markup_escaped(disposal.waste_class) + "</strong></div></li>\n";
        }
        text += "</ul>\n";
    }
    if (text.empty()) {
        return {};
    }
    return "<section class=\"keep\" aria-labelledby=\"afterwards\">\n"
           "<h2 id=\"afterwards\">" +
           markup_escaped(say(document.language, "Afterwards")) + "</h2>\n" + text + "</section>\n";
}

} // namespace matchmark::publish
