// Marks placed on a photo or a face, written into the source as its author would write them.
#pragma once

#include "model/item.hpp"
#include "source/disk.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace matchmark::serve {

// What is to be written.
struct MarkOrder {
    std::string file;
    std::string print;            // fingerprint of the file when the page was made
    std::uint32_t photo_line = 0; // line of the photo; 0: the places are on a face
    std::string face;
    std::string item;
    unsigned most = 0;                // places that the item may have on a face
    std::vector<model::Point> points; // fractions of a photo; mm of a face
    bool instead = false;             // of the places that the item has there
};

// A change of one file that can be taken back.
struct Written {
    std::string path;
    std::string before;
    std::string after;
    std::string words; // the line written, and where: "`mark lid 0.5,0.5` in open.mmk, line 14"
};

struct Refusal {
    int status = 409; // of HTTP
    std::string reason;
};

// The text with the line added to; a new line where there is none yet. Nothing is written.
std::variant<Written, Refusal> with_marks(std::string_view text, const MarkOrder& order);

// Writes them, unless the file is another than when the page was made.
std::variant<Written, Refusal> write_marks(Disk& disk, const MarkOrder& order);

// Puts the file back as it was, unless it was changed since.
std::variant<std::monostate, Refusal> take_back(Disk& disk, const Written& written);

} // namespace matchmark::serve
