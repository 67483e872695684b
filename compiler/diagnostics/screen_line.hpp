// A line of source as a terminal shows it, and where its characters stand there.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace matchmark {

// The part of a line that is shown. Columns count cells of the screen from 0: a tab reaches to the
// next multiple of four, a character of East Asian width takes two cells, a combining one none.
struct ScreenLine {
    std::string
        text; // without trailing spaces; what could disturb the screen is replaced by U+FFFD
    std::size_t mark = 0;  // column at which the marked bytes begin
    std::size_t width = 0; // cells that the marked bytes take in what is shown; 0 for an empty mark
};

// Shows `line` with bytes [begin, end) marked. A line of more than 100 cells is cut round the mark,
// with "..." in place of what is left out. Places outside the line are moved to its end.
ScreenLine show_line(std::string_view line, std::size_t begin, std::size_t end);

// Text for people as one line: nothing in it that would move the cursor or turn the direction of
// reading.
std::string one_line(std::string_view text);

// Cells that a text takes on the screen.
std::size_t screen_width(std::string_view text);

} // namespace matchmark
