// Markup as a tree, and drawings made harmless. The one door to libxml2.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace matchmark::publish {

struct Markup {
    std::string tag;  // empty: a piece of text
    std::string text; // of a piece of text
    std::map<std::string, std::string> attributes;
    std::vector<Markup> children;
};

// An author's Markdown as the tree of what `guide::prose_html` makes of it: paragraphs, lists,
// tables, headings, nothing that could run.
std::vector<Markup> prose_tree(std::string_view markdown);

// All its text in a row; blocks and lines are parted by one space.
std::string plain_text(const std::vector<Markup>& nodes);

// The drawing without scripts, animation, references to anything outside, document type and
// comments: what is not known to be harmless is left out. Empty when it is no well-formed SVG.
std::string harmless_svg(std::string_view bytes);

} // namespace matchmark::publish
