// What a page of the preview holds, and where on it marks can be placed.
#pragma once

#include "serve/preview/findings.hpp"
#include "serve/preview/folder.hpp"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace matchmark::serve {

// A photo of the page, and its line in the source.
struct PhotoPlace {
    std::string step;   // anchor; empty: above all steps
    unsigned index = 0; // among the photos there, from 0
    std::string file;
    std::uint32_t line = 0;
};

struct ItemChoice {
    std::string name;
    std::string words; // "4 lid screws"
    unsigned count = 1;
    std::string face;    // on which it has places; empty: on none
    unsigned places = 0; // that it has
    std::string file;    // that declares it
};

struct FacePlace {
    std::string name;
    double width_mm = 0;
    double height_mm = 0;
};

struct Content {
    std::string title;
    std::string body; // without findings
    std::vector<StepPlace> steps;
    std::vector<PhotoPlace> photos;
    std::vector<ItemChoice> items;
    std::vector<FacePlace> faces;              // of the page of a device
    std::map<std::string, std::string> prints; // fingerprints of the files read, by path
};

struct Shown {
    std::string guide; // its name; empty: the page of a device
    std::optional<Content> content;
    std::vector<FindingOnPage> findings;
    bool wrong = false; // with errors
};

// The page of a file: that of the guide of this name, of the first guide (empty), or, where none
// is declared, that of the device. Without content when the file has errors that leave no guide to
// show. Pictures are asked for under /picture/, by the way to them below the folder.
Shown show(FolderDisk& disk, const std::string& path, const std::string& guide);

// Tells texts apart.
std::string fingerprint(std::string_view text);

} // namespace matchmark::serve
