// Points at words of a text, so that tests need not count bytes.
#pragma once

#include "source/text.hpp"

#include <doctest/doctest.h>

#include <cstdint>
#include <string_view>

namespace matchmark::test {

// The span of the first `words` in a file at or after byte `from`; fails the test when there is
// none.
inline Span span_of(const SourceMap& sources, FileId file, std::string_view words,
                    std::size_t from = 0) {
    const std::size_t at = sources.file(file).text.find(words, from);
    REQUIRE(at != std::string::npos);
    const auto begin = static_cast<std::uint32_t>(at);
    return {file, begin, begin + static_cast<std::uint32_t>(words.size())};
}

} // namespace matchmark::test
