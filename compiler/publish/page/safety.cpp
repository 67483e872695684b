// Safety messages as panels with their signal words.
//
// The words and what they mean are those of ANSI Z535.6. A notice, which is about property alone,
// has no safety alert symbol (ANSI Z535.4, 4.14). Weight of line, not colour, tells them apart.
#include "publish/page/safety.hpp"

#include "guide/prose.hpp"
#include "publish/fixed_words.hpp"
#include "publish/page/sign.hpp"
#include "publish/page/text.hpp"
#include "publish/page/words.hpp"
#include "source/markup.hpp"

namespace matchmark::publish {

using guide::Message;
using guide::Signal;

namespace {

// Our own drawing: a triangle with a stroke and a dot.
constexpr const char* alert =
    "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 31 28\" aria-hidden=\"true\" "
    "focusable=\"false\"><path d=\"M15.5 2.5 29 "
    "25.5H2z\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"3\" stroke-linejoin=\"round\"/>"
    "<path d=\"M15.5 10v7.2\" stroke=\"currentColor\" stroke-width=\"3\" stroke-linecap=\"round\"/>"
    "<circle cx=\"15.5\" cy=\"21.6\" r=\"1.8\" fill=\"currentColor\"/></svg>";

const char* style_of(Signal signal) {
    switch (signal) {
    case Signal::danger:
        return "danger";
    case Signal::warning:
        return "warning";
    case Signal::caution:
        return "caution";
    case Signal::notice:
        break;
    }
    return "notice";
}

std::string link_to(const Language& in, unsigned step) {
    const std::string number = std::to_string(step);
    return "<a href=\"#step-" + number + "\">" +
           markup_escaped(say_with(in, "step {step}", "step", number)) + "</a>";
}

std::string panel_with(const guide::Document& document, const Message& message,
                       const std::string& after) {
    const std::string symbol = message.signal == Signal::notice ? "" : alert;
    std::string text = "<div class=\"signal " + std::string(style_of(message.signal)) + "\">\n";
    text += "<p class=\"word\">" + symbol +
            markup_escaped(guide::signal_word(message.signal, document.language)) + "</p>\n";
    const std::string shown = sign(document, message.sign);
    text += shown.empty() ? "" : "<div class=\"shown\">" + shown + "</div>\n";
    text += "<div class=\"said\">\n";
    std::string about = markup_escaped(message.subject);
    if (const std::string tag = variant_tag(message.variants, document.language); !tag.empty()) {
        about += (about.empty() ? "" : " ") + tag;
    }
    if (message.full_in_step != 0) {
        const std::string link = link_to(document.language, message.full_in_step);
        about += about.empty() ? say_with(document.language, "See {step}", "step", link)
                               : say_with(document.language, ": see {step}", "step", link);
    }
    text += about.empty() ? "" : "<p class=\"about\">" + about + "</p>\n";
    text += message.full_in_step == 0 ? guide::prose_html(message.markdown) : "";
    return text + after + "</div>\n</div>\n";
}

} // namespace

std::string variant_tag(const std::vector<std::string>& variants, const Language& in) {
    if (variants.empty()) {
        return {};
    }
    return "<span class=\"variant\">" + markup_escaped(say_only(in, variants)) + "</span>";
}

std::string panel(const guide::Document& document, const Message& message) {
    return panel_with(document, message, {});
}

std::string safety_first(const guide::Document& document) {
    if (document.safety.empty() && document.energies.empty()) {
        return {};
    }
    const Language& in = document.language;
    std::string text = "<section aria-labelledby=\"safety\">\n<h2 id=\"safety\">" +
                       markup_escaped(say(in, "Safety first")) + "</h2>\n";
    if (!document.safety.empty()) {
        text += "<p>" +
                markup_escaped(
                    say(in, "Read all of this before you begin. Each message stands again at "
                            "the step that it is about.")) +
                "</p>\n";
    }
    for (const guide::GatheredMessage& gathered : document.safety) {
        std::vector<std::string> links;
        for (const unsigned step : gathered.steps) {
            links.push_back(link_to(in, step));
        }
        const std::string where = "<p class=\"small\">" +
                                  (links.empty() ? markup_escaped(say(in, "The whole work."))
                                                 : say_with(in, "See {steps}.", "steps",
                                                            language::said_list(in, links))) +
                                  "</p>\n";
        text += panel_with(document, gathered.message, where);
    }
    text += listed("What is stored in it", document.energies, in);
    return text + "</section>\n";
}

} // namespace matchmark::publish
