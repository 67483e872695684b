// Cuts a text into physical lines and measures how far each is indented.
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

namespace matchmark::syntax {

// One physical line; offsets are bytes from the start of the text.
struct RawLine {
    std::uint32_t begin = 0;   // its first byte (after a byte order mark)
    std::uint32_t content = 0; // its first byte that is not space; `end` if there is none
    std::uint32_t end = 0; // after its last byte that is not space; the line end is not part of it
    std::uint32_t indent = 0; // columns before `content`; a tab reaches to the next multiple of 8

    [[nodiscard]] bool blank() const { return content == end; }
};

// An empty text has no lines; a text that ends in a line end has no empty line after it.
std::vector<RawLine> cut_lines(std::string_view text);

// The offset in the line at which `column` (from 0) is reached, not past its content.
std::uint32_t offset_of_column(std::string_view text, const RawLine& line, std::uint32_t column);

} // namespace matchmark::syntax
