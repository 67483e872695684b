// Cuts a text into physical lines and measures how far each is indented.
#include "parse/lines.hpp"

#include <algorithm>

namespace matchmark::syntax {

namespace {

constexpr std::uint32_t tab_width = 8;
constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

bool is_space(char byte) { return byte == ' ' || byte == '\t' || byte == '\r'; }

std::uint32_t column_after(char byte, std::uint32_t column) {
    return byte == '\t' ? (column / tab_width + 1) * tab_width : column + 1;
}

RawLine measure(std::string_view text, std::size_t begin, std::size_t end) {
    while (end > begin && is_space(text[end - 1])) {
        --end;
    }
    std::size_t content = begin;
    std::uint32_t indent = 0;
    while (content < end && is_space(text[content])) {
        indent = column_after(text[content], indent);
        ++content;
    }
    return {static_cast<std::uint32_t>(begin), static_cast<std::uint32_t>(content),
            static_cast<std::uint32_t>(end), indent};
}

} // namespace

std::vector<RawLine> cut_lines(std::string_view text) {
    std::vector<RawLine> lines;
    lines.reserve(static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n')) + 1);
    std::size_t begin = text.starts_with(byte_order_mark) ? byte_order_mark.size() : 0;
    while (begin < text.size()) {
        const std::size_t end = std::min(text.find('\n', begin), text.size());
        lines.push_back(measure(text, begin, end));
        begin = end + 1;
    }
    return lines;
}

std::uint32_t offset_of_column(std::string_view text, const RawLine& line, std::uint32_t column) {
    std::uint32_t at = line.begin;
    std::uint32_t reached = 0;
    while (at < line.content && reached < column) {
        reached = column_after(text[at], reached);
        ++at;
    }
    return at;
}

} // namespace matchmark::syntax
