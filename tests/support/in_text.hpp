// What stands in a text.
#pragma once

#include <cstddef>
#include <string_view>

namespace matchmark::test {

inline bool has(std::string_view text, std::string_view part) {
    return text.find(part) != std::string_view::npos;
}

inline std::size_t count(std::string_view text, std::string_view part) {
    std::size_t found = 0;
    for (auto at = text.find(part); at != std::string_view::npos; at = text.find(part, at + 1))
        ++found;
    return found;
}

} // namespace matchmark::test
