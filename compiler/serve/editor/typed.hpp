// The line that is being typed, up to the cursor, cut into words. It need not be whole.
#pragma once

#include "syntax/tree.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace matchmark::serve {

struct TypedLine {
    bool indented = false;
    bool in_text = false;           // inside double quotes
    bool in_comment = false;        // or prose
    std::vector<std::string> words; // before the one at the cursor; a comma is a word
    std::string partial;            // the word at the cursor, as far as it is typed
    std::uint32_t begin = 0;        // byte of the text at which `partial` starts
    std::uint32_t line_begin = 0;
    std::uint32_t line_end = 0;

    [[nodiscard]] bool has(std::size_t at, std::string_view word) const {
        return at < words.size() && words[at] == word;
    }
};

TypedLine typed_line(std::string_view text, std::uint32_t offset);

// The text with that line left empty: what stands around it can be understood.
std::string without_line(std::string_view text, const TypedLine& line);

// The last of the words that tie a line together (`with`, `to`), and where it stands; the count of
// words when there is none from `first` on.
std::size_t last_joining_word(const TypedLine& line, std::size_t first);

// The words since the last comma, or since the joining word before it.
std::vector<std::string> since_comma(const TypedLine& line, std::size_t first);

} // namespace matchmark::serve
