// Cuts at spaces and commas: a line that is half written fits no rule of the grammar.
#include "serve/editor/typed.hpp"

#include <algorithm>
#include <array>

namespace matchmark::serve {

namespace {

bool is_space(char c) { return c == ' ' || c == '\t'; }

bool joins(std::string_view word) {
    static constexpr std::array<std::string_view, 20> words = {
        "with",    "to",    "for",   "in", "as",     "by", "or",    "on",   "when", "else",
        "through", "below", "above", "at", "across", "is", "until", "only", "kind", "x"};
    return std::find(words.begin(), words.end(), word) != words.end();
}

} // namespace

TypedLine typed_line(std::string_view text, std::uint32_t offset) {
    TypedLine line;
    const std::size_t before = offset == 0 ? std::string_view::npos : text.rfind('\n', offset - 1);
    const std::size_t start = before == std::string_view::npos ? 0 : before + 1;
    line.line_begin = static_cast<std::uint32_t>(start);
    line.line_end = static_cast<std::uint32_t>(std::min(text.find('\n', offset), text.size()));
    line.begin = offset;
    const std::string_view typed = text.substr(start, offset - start);
    line.indented = !typed.empty() && is_space(typed.front());
    std::size_t word = 0;
    bool open = false; // a word has begun
    const auto close = [&](std::size_t end) {
        if (open)
            line.words.emplace_back(typed.substr(word, end - word));
        open = false;
    };
    for (std::size_t i = 0; i < typed.size(); ++i) {
        const char c = typed[i];
        if (line.in_text) {
            if (c == '\\') {
                ++i;
            } else if (c == '"') {
                line.in_text = false;
                close(i + 1);
            }
        } else if (c == '"') {
            close(i);
            line.in_text = open = true;
            word = i;
        } else if (c == '#' || (c == ':' && line.words.empty())) {
            line.in_comment = true; // or prose, after its keyword
            break;
        } else if (is_space(c) || c == ',') {
            close(i);
            if (c == ',')
                line.words.emplace_back(",");
        } else if (!open) {
            open = true;
            word = i;
        }
    }
    if (open && !line.in_comment) {
        line.partial = typed.substr(word);
        line.begin = static_cast<std::uint32_t>(start + word);
    }
    return line;
}

std::string without_line(std::string_view text, const TypedLine& line) {
    std::string result(text.substr(0, line.line_begin));
    result += text.substr(line.line_end);
    return result;
}

std::size_t last_joining_word(const TypedLine& line, std::size_t first) {
    for (std::size_t i = line.words.size(); i > first; --i) {
        if (joins(line.words[i - 1]))
            return i - 1;
    }
    return line.words.size();
}

std::vector<std::string> since_comma(const TypedLine& line, std::size_t first) {
    std::vector<std::string> words;
    for (std::size_t i = first; i < line.words.size(); ++i) {
        if (line.words[i] == "," || joins(line.words[i])) {
            words.clear();
        } else {
            words.push_back(line.words[i]);
        }
    }
    return words;
}

} // namespace matchmark::serve
