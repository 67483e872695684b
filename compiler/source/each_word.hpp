// Goes through the words of a text without copying them.
#pragma once

#include <algorithm>
#include <string_view>

namespace matchmark {

// Calls `visit(word)` for each word in turn; `between`: the letters that part words.
template <class Visit>
void each_word(std::string_view text, std::string_view between, Visit visit) {
    for (std::size_t at = text.find_first_not_of(between); at != std::string_view::npos;) {
        const std::size_t end = std::min(text.find_first_of(between, at), text.size());
        visit(text.substr(at, end - at));
        at = text.find_first_not_of(between, end);
    }
}

} // namespace matchmark
