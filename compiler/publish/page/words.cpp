// Sentences and passages of a guide as parts of a page.
#include "publish/page/words.hpp"

#include "guide/prose.hpp"
#include "publish/fixed_words.hpp"
#include "publish/page/text.hpp"
#include "source/markup.hpp"

namespace matchmark::publish {

std::string words(const guide::Words& words, const Language& in) {
    std::string text;
    for (const guide::Run& run : words) {
        switch (run.kind) {
        case guide::RunKind::words:
            text += markup_escaped(run.text);
            break;
        case guide::RunKind::value:
            text += "<strong class=\"value\">" + markup_escaped(run.text) + "</strong>";
            break;
        case guide::RunKind::item_number:
            text += " <span class=\"number\"><span class=\"unseen\">" +
                    markup_escaped(say(in, "number")) + " </span>" + markup_escaped(run.text) +
                    "</span>";
            break;
        }
    }
    return text;
}

std::string listed(const char* label, const std::vector<guide::Words>& sentences,
                   const Language& in) {
    if (sentences.empty()) {
        return {};
    }
    std::string text =
        "<p class=\"label\"><strong>" + markup_escaped(say(in, label)) + "</strong></p>\n<ul>\n";
    for (const guide::Words& sentence : sentences) {
        text += "<li>" + words(sentence, in) + "</li>\n";
    }
    return text + "</ul>\n";
}

std::string passages(const std::vector<guide::Passage>& passages, const Language& in) {
    std::string text;
    for (const guide::Passage& passage : passages) {
        const std::string body = guide::prose_html(passage.markdown);
        switch (passage.kind) {
        case guide::PassageKind::text:
            text += body;
            break;
        case guide::PassageKind::note:
            text += "<div class=\"note\">\n<p class=\"label\">" + markup_escaped(say(in, "Note")) +
                    "</p>\n" + body + "</div>\n";
            break;
        case guide::PassageKind::why:
            text += "<div class=\"note\">\n<p class=\"label\">" +
                    markup_escaped(say(in, "Reason")) + "</p>\n" + body + "</div>\n";
            break;
        }
    }
    return text;
}

} // namespace matchmark::publish
