// The words of a line that makes no sense, and what is offered in place of some.
#pragma once

#include "parse/slips.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace matchmark::syntax {

inline bool is_gap(char byte) { return byte == ' ' || byte == '\t'; }

// The first place from `at` on that is no gap; the end of the scene if there is none.
std::uint32_t after_spaces(const Scene& scene, std::uint32_t at);

// The words of a line, cut at its spaces.
std::vector<Span> words_from(const Scene& scene, std::uint32_t at);

bool is_one_of(std::string_view word, const std::vector<std::string_view>& words);

// "four" -> 4; 0 for any other word.
std::size_t figure_of(std::string_view word);

// Offers the words in place of what stands there: a guess at what was meant.
void change(Diagnostic& finding, Span where, std::string words, std::string help);

} // namespace matchmark::syntax
