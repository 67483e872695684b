// The page that leads to the other pages, when a folder of guides is published.
#pragma once

#include "guide/document.hpp"

#include <string>
#include <vector>

namespace matchmark::publish {

struct IndexEntry {
    std::string device; // title; the guides of one device stand together
    std::string title;
    std::string file;  // as seen from the index
    std::string time;  // "at least 25 min"; may be empty
    std::string words; // more that it is found by
};

// Titles of its steps, tools, spares and fasteners.
std::string search_words(const guide::Document& document);

// A page of one list for each device, devices and guides in order of title. With scripts on, a
// field above it searches, without any network.
std::string index_page(std::vector<IndexEntry> entries,
                       const language::Language& in = language::english());

// A file's path as the reference to it from another file of the same published folder.
std::string reference(const std::string& from, const std::string& to);

} // namespace matchmark::publish
