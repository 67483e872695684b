// Puts one piece of a text in the place of another, wherever that stands.
#pragma once

#include <string>
#include <string_view>

namespace matchmark {

// `from` is not empty. What is put in is not looked through again.
inline void replace_all(std::string& text, std::string_view from, std::string_view to) {
    for (std::size_t at = text.find(from); at != std::string::npos;
         at = text.find(from, at + to.size())) {
        text.replace(at, from.size(), to);
    }
}

} // namespace matchmark
