// The words of a line that makes no sense, and what is offered in place of some.
#include "parse/line_words.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace matchmark::syntax {

std::uint32_t after_spaces(const Scene& scene, std::uint32_t at) {
    while (at < scene.end && is_gap(scene.text[at])) {
        ++at;
    }
    return at;
}

std::vector<Span> words_from(const Scene& scene, std::uint32_t at) {
    std::vector<Span> words;
    for (at = after_spaces(scene, at); at < scene.end; at = after_spaces(scene, at)) {
        std::uint32_t end = at;
        while (end < scene.end && !is_gap(scene.text[end])) {
            ++end;
        }
        words.push_back(scene.span(at, end));
        at = end;
    }
    return words;
}

bool is_one_of(std::string_view word, const std::vector<std::string_view>& words) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

std::size_t figure_of(std::string_view word) {
    static constexpr auto words = std::to_array<std::string_view>(
        {"one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"});
    const auto* const found = std::find(words.begin(), words.end(), word);
    return found == words.end() ? 0 : static_cast<std::size_t>(found - words.begin()) + 1;
}

void change(Diagnostic& finding, Span where, std::string words, std::string help) {
    finding.help = std::move(help);
    finding.edits.push_back({where, std::move(words)});
    finding.safe = false; // a guess at what was meant
}

} // namespace matchmark::syntax
