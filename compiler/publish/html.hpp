// The guide as one page of HTML: to read on a screen at the bench, or to print.
#pragma once

#include "guide/document.hpp"

namespace matchmark::publish {

// The page holds all that it shows: style, pictures, signs, one script whose hash its content
// security policy names; it asks nothing of any network. All is there with scripts off, too. A
// picture that `assets` lacks, or that is neither PNG, JPEG, GIF, WebP nor SVG, is shown by its
// alternative text.
std::string html(const guide::Document& document, const guide::Assets& assets);

// A page elsewhere in the folder that is published.
struct PageLink {
    std::string title;
    std::string address;
};

// The page with a way to the list of all guides, and to the others for the same device.
std::string with_links(std::string page, const std::string& list,
                       const std::vector<PageLink>& others,
                       const language::Language& in = language::english());

} // namespace matchmark::publish
