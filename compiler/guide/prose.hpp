// The one door to cmark-gfm: an author's Markdown becomes HTML that can do no harm.
#pragma once

#include <string>
#include <string_view>

namespace matchmark::guide {

// HTML blocks (paragraphs, lists, tables, headings from h4 down), every tag closed. Markup in the
// text is shown as text, pictures become their alternative text (photos have a line of their own in
// the language), and links that could run something lead nowhere. Lists and quotes nested deeper
// than any reader follows are laid flat.
std::string prose_html(std::string_view markdown);

} // namespace matchmark::guide
