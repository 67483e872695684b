// The words of one line in the canonical layout, without its comment.
#pragma once

#include "syntax/tree.hpp"

#include <cstddef>
#include <string>
#include <string_view>

namespace matchmark {

inline constexpr std::size_t detail_indent = 2;
inline constexpr std::size_t deep_indent =
    4; // of details of a detail, and of prose below its keyword

// `part lid "display lid" in back`
std::string declaration_wording(const SourceMap& sources, const syntax::File& file,
                                const syntax::Line& line);
// `  covers     board, cell`
std::string detail_wording(const SourceMap& sources, const syntax::File& file,
                           const syntax::Line& line);
// The same without the indentation and the padding, as it stands on a declaration's line.
std::string joined_wording(const SourceMap& sources, const syntax::File& file,
                           const syntax::Line& line);
// A line of prose below its keyword; Markdown's own indentation is kept.
std::string prose_wording(const SourceMap& sources, const syntax::File& file, std::size_t number);

// What an item's head says already.
struct HeadParts {
    bool carrier = false;
    bool variants = false;
    bool amount = false;
    bool kind = false; // or a count; always last

    [[nodiscard]] bool may_add(syntax::Keyword keyword) const;
    void add(syntax::Keyword keyword);
};
HeadParts head_parts(const SourceMap& sources, const syntax::File& file, const syntax::Line& line);

// In characters.
std::size_t width_of(std::string_view words);

} // namespace matchmark
