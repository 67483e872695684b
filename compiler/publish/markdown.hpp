// The guide as GitHub Flavored Markdown: for wikis, repositories and plain reading.
#pragma once

#include "publish/shown_picture.hpp"

namespace matchmark::publish {

// Headings, task lists and tables; no raw HTML. `pictures` tells where each picture is found beside
// the file.
std::string markdown(const guide::Document& document, const ShownPictures& pictures);

// What stands for itself in Markdown, whatever it holds, on one line.
std::string markdown_text(std::string_view text);

// An author's Markdown written anew: markup shown as text, links that could run something dead.
std::string markdown_prose(std::string_view markdown);

} // namespace matchmark::publish
