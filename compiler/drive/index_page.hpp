// The page that leads to the other pages, when a folder of guides is published.
#pragma once

#include <string>
#include <vector>

namespace matchmark::drive {

struct IndexEntry {
    std::string device; // title; the guides of one device stand together
    std::string title;
    std::string file; // as seen from the index
    std::string time; // "at least 25 min"; may be empty
};

// A page of one list for each device, devices and guides in order of title.
std::string index_page(std::vector<IndexEntry> entries);

} // namespace matchmark::drive
