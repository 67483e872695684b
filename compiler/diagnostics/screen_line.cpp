// How wide each character is on a screen, so that the carets stand under what they mark.
#include "diagnostics/screen_line.hpp"

#include <utf8proc.h>

#include <algorithm>
#include <cstdint>
#include <optional>
#include <vector>

namespace matchmark {

namespace {

constexpr std::size_t tab_stop = 4;
constexpr std::size_t widest = 100;       // cells of a line that are shown
constexpr std::size_t lead_in = 20;       // cells shown before the mark when a line is cut
constexpr std::size_t bytes_before = 512; // of a very long line, looked at before the mark
constexpr std::size_t bytes_after = 2048; // and after its beginning
constexpr std::string_view replacement = "\xEF\xBF\xBD"; // U+FFFD
constexpr std::string_view ellipsis = "...";

struct Cell {
    std::size_t byte = 0;   // where the character begins in the line
    std::size_t column = 0; // where it begins on the screen
    std::size_t width = 0;
    std::string_view bytes; // empty for a tab, which is shown as spaces
};

bool continues_a_character(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

// Controls move the cursor; marks of direction reorder what stands beside them.
bool disturbs(std::int32_t character) {
    const bool control = character < 0x20 || (character >= 0x7F && character < 0xA0);
    const bool direction = character == 0x200E || character == 0x200F ||
                           (character >= 0x202A && character <= 0x202E) ||
                           (character >= 0x2066 && character <= 0x2069);
    const bool line_end = character == 0x2028 || character == 0x2029;
    return control || direction || line_end;
}

// The character at the start of a text that is not empty.
Cell cell_at(std::string_view text, std::size_t column) {
    Cell cell;
    cell.column = column;
    if (text.front() == '\t') {
        cell.width = tab_stop - column % tab_stop;
        return cell;
    }
    std::int32_t character = 0;
    const auto* bytes = reinterpret_cast<const utf8proc_uint8_t*>(text.data());
    const auto size = static_cast<utf8proc_ssize_t>(std::min<std::size_t>(text.size(), 4));
    const utf8proc_ssize_t length = utf8proc_iterate(bytes, size, &character);
    if (length < 1) {
        cell.bytes = text.substr(0, 1);
        cell.width = 1;
        return cell;
    }
    cell.bytes = text.substr(0, static_cast<std::size_t>(length));
    cell.width = disturbs(character)
                     ? 1
                     : static_cast<std::size_t>(std::max(0, utf8proc_charwidth(character)));
    return cell;
}

bool readable(std::string_view bytes) {
    std::int32_t character = 0;
    const auto* first = reinterpret_cast<const utf8proc_uint8_t*>(bytes.data());
    return utf8proc_iterate(first, static_cast<utf8proc_ssize_t>(bytes.size()), &character) > 0 &&
           !disturbs(character);
}

void put(std::string& out, const Cell& cell) {
    if (cell.bytes.empty()) {
        out.append(cell.width, ' ');
    } else {
        out += readable(cell.bytes) ? cell.bytes : replacement;
    }
}

// The characters of a text whose first byte is byte `offset` of its line.
std::vector<Cell> cells_of(std::string_view text, std::size_t offset) {
    std::vector<Cell> cells;
    std::size_t column = 0;
    for (std::size_t at = 0; at < text.size();) {
        Cell cell = cell_at(text.substr(at), column);
        cell.byte = offset + at;
        column += cell.width;
        at += std::max<std::size_t>(1, cell.bytes.size());
        cells.push_back(cell);
    }
    return cells;
}

std::string_view without_trailing_space(std::string_view line) {
    const std::size_t last = line.find_last_not_of(" \t\r");
    return line.substr(0, last == std::string_view::npos ? 0 : last + 1);
}

// First column shown, and the first no longer shown.
struct Window {
    std::size_t begin = 0;
    std::size_t end = 0;
};

Window window_round(std::size_t mark, std::size_t total) {
    if (total <= widest) {
        return {0, total};
    }
    const std::size_t wished = mark > widest - lead_in ? mark - lead_in : 0;
    const std::size_t begin = std::min(wished, total - widest);
    return {begin, begin + widest};
}

} // namespace

ScreenLine show_line(std::string_view line, std::size_t begin, std::size_t end) {
    begin = std::min(begin, line.size());
    end = std::clamp(end, begin, line.size());
    while (begin > 0 && begin < line.size() && continues_a_character(line[begin])) {
        --begin;
    }
    while (end < line.size() && continues_a_character(line[end])) {
        ++end;
    }
    // Of a line of many thousand bytes only the neighbourhood of the mark is looked at.
    std::size_t first = begin > bytes_before ? begin - bytes_before : 0;
    while (first < begin && continues_a_character(line[first])) {
        ++first;
    }
    const std::string_view near = line.substr(first, begin - first + bytes_after);
    const bool more_after = first + near.size() < line.size();
    const std::string_view shown =
        more_after ? near
                   : line.substr(first, std::max(end - first, without_trailing_space(near).size()));
    const std::vector<Cell> cells = cells_of(shown, first);
    const std::size_t total = cells.empty() ? 0 : cells.back().column + cells.back().width;

    const auto column_of = [&](std::size_t byte) {
        const auto cell =
            std::find_if(cells.begin(), cells.end(), [&](const Cell& c) { return c.byte >= byte; });
        return cell == cells.end() ? total : cell->column;
    };
    const std::size_t mark = column_of(begin);
    const std::size_t mark_end = column_of(end);
    const Window window = window_round(mark, total);

    ScreenLine result;
    const bool cut_before = window.begin > 0 || first > 0;
    const std::size_t shift = cut_before ? ellipsis.size() : 0;
    result.text = cut_before ? ellipsis : "";
    std::size_t column = window.begin;
    for (const Cell& cell : cells) {
        if (cell.column < window.begin || cell.column + cell.width > window.end) {
            continue;
        }
        // A wide character cut in half at the edge leaves an empty cell.
        result.text.append(cell.column - column, ' ');
        put(result.text, cell);
        column = cell.column + cell.width;
    }
    if (window.end < total || more_after) {
        result.text += ellipsis;
    }
    result.mark = std::max(mark, window.begin) - window.begin + shift;
    result.width = std::min(mark_end, window.end) - std::min(mark, window.end);
    result.text = without_trailing_space(result.text);
    return result;
}

std::string one_line(std::string_view text) {
    std::string out;
    for (const Cell& cell : cells_of(text, 0)) {
        if (cell.bytes.empty() || cell.bytes == "\n" || cell.bytes == "\r") {
            out += ' ';
        } else {
            put(out, cell);
        }
    }
    return out;
}

std::size_t screen_width(std::string_view text) {
    std::size_t width = 0;
    for (const Cell& cell : cells_of(text, 0)) {
        width += cell.width;
    }
    return width;
}

} // namespace matchmark
