// The compiler's own drawings as parts of a page.
#include "publish/page/drawing.hpp"

#include "guide/prose.hpp"
#include "model/quantity.hpp"
#include "publish/fixed_words.hpp"
#include "publish/page/text.hpp"
#include "source/markup.hpp"

#include <cmath>

namespace matchmark::publish {

// A drawing wider than the page keeps its size, so that it stays legible, and is moved under its
// frame.
std::string drawings(const guide::Document& document,
                     const std::function<std::string(std::size_t)>& source) {
    if (document.figures.empty()) {
        return {};
    }
    std::string text = "<section aria-labelledby=\"drawings\">\n<h2 id=\"drawings\">" +
                       markup_escaped(say(document.language, "Drawings")) + "</h2>\n";
    for (std::size_t i = 0; i < document.figures.size(); ++i) {
        const guide::Figure& figure = document.figures[i];
        const std::string anchor = markup_escaped(figure.anchor);
        text += "<section class=\"drawn\" aria-labelledby=\"" + anchor + "\">\n<h3 id=\"" + anchor +
                "\">" + markup_escaped(figure.title) +
                "</h3>\n<div class=\"drawing\" role=\"group\" "
                "aria-labelledby=\"" +
                anchor + "\" tabindex=\"0\"><img src=\"" + markup_escaped(source(i)) + "\" alt=\"" +
                markup_escaped(
                    say_with(document.language, "{title}; in words below", "title", figure.title)) +
                "\" style=\"width:" + model::number_text(std::round(figure.width_mm)) +
                "mm\" /></div>\n";
        if (!figure.alternative_text.empty()) {
            text += "<details><summary>" + markup_escaped(say(document.language, "In words")) +
                    "</summary>\n" + guide::prose_html(figure.alternative_text) + "</details>\n";
        }
        text += "</section>\n";
    }
    return text + "</section>\n";
}

} // namespace matchmark::publish
