// The guide as a PDF, to print and keep: the same content as the page.
#include "publish/pdf.hpp"

#include "language/punctuation.hpp"
#include "publish/facts.hpp"
#include "publish/fixed_words.hpp"
#include "publish/paper/pdf_parts.hpp"

#include <algorithm>

namespace matchmark::publish {

namespace {

constexpr Margins margins{51, 54, 50};

std::string joined(const std::vector<std::string>& words, const std::string& between) {
    std::string text;
    for (const std::string& one : words) {
        text += one.empty() ? "" : (text.empty() ? "" : between) + one;
    }
    return text;
}

std::string foot(const guide::Document& document) {
    const auto named = [&](const char* pattern, const std::string& value) {
        return value.empty() ? value : say_with(document.language, pattern, "value", value);
    };
    return joined({named("revision {value}", document.revision), document.date,
                   named("source {value}", document.source_version), document.name},
                  "  \u00b7  ");
}

} // namespace

std::string pdf(const guide::Document& document, const guide::Assets& assets, Paper paper,
                const std::string& created, const FigurePainter& painter) {
    Printer printer = printer_for(paper, margins, document.language.tag);
    Flow flow = flow_for(printer);
    const ShownPictures pictures = shown_pictures(assets);
    Leaflet leaflet{document, pictures, painter, printer, flow};
    add_title_block(leaflet);
    add_opening(leaflet);
    add_contents(leaflet);
    add_safety(leaflet);
    add_needs(leaflet);
    add_sections(leaflet);
    add_afterwards(leaflet);
    add_figures(leaflet);
    const std::string title =
        joined({document.title, document.device}, language::colon(document.language));
    return print(printer, flow.boxes,
                 {title, document.author, document.device, created, document.date, title,
                  foot(document), document.language.tag,
                  say(document.language, "page {page} of {pages}")});
}

} // namespace matchmark::publish
