// The words of one line in the canonical layout, without its comment.
#include "tidy/wording.hpp"

#include <algorithm>

namespace matchmark {

namespace {

using syntax::Keyword;
using syntax::Line;
using syntax::Term;
using syntax::TermKind;

constexpr std::size_t detail_keyword_width = 10;
constexpr std::size_t deep_keyword_width = 8;
constexpr std::uint32_t tab_width = 8;

// No space stands between these two; `places` says that the line gives places, `5,5`.
bool close(const Term& left, const Term& right, bool places) {
    if (right.kind == TermKind::range || left.kind == TermKind::range) {
        return true;
    }
    if (right.kind == TermKind::comma) {
        return true;
    }
    return places && left.kind == TermKind::comma && left.end() == right.begin;
}

std::string terms_wording(const SourceMap& sources, const syntax::File& file, const Line& line) {
    const bool places = line.keyword == Keyword::at || line.keyword == Keyword::mark_on_photo;
    std::string words;
    for (std::uint32_t at = 0; at < line.term_count; ++at) {
        const Term& term = file.terms[line.first_term + at];
        if (at > 0 && !close(file.terms[line.first_term + at - 1], term, places)) {
            words += ' ';
        }
        words += sources.slice(file.span_of(term));
    }
    return words;
}

// A keyword of several words has one space between them; a verb is as it is written.
std::string head_wording(const SourceMap& sources, const Line& line) {
    const std::string_view spelled = syntax::spelling(line.keyword);
    return std::string(spelled.empty() ? sources.slice(line.head) : spelled);
}

bool opens_with_number(const Line& line) {
    return line.keyword == Keyword::count || line.keyword == Keyword::quantity;
}

// The column that the last of these spaces and tabs reaches.
std::size_t column_after(std::string_view spaces) {
    std::size_t column = 0;
    for (const char byte : spaces) {
        column = byte == '\t' ? (column / tab_width + 1) * tab_width : column + 1;
    }
    return column;
}

} // namespace

std::size_t width_of(std::string_view words) {
    return static_cast<std::size_t>(std::count_if(words.begin(), words.end(), [](char byte) {
        return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U;
    }));
}

std::string declaration_wording(const SourceMap& sources, const syntax::File& file,
                                const Line& line) {
    const std::string terms = terms_wording(sources, file, line);
    return head_wording(sources, line) + (terms.empty() ? "" : " ") + terms;
}

std::string detail_wording(const SourceMap& sources, const syntax::File& file, const Line& line) {
    std::string words(line.depth == 2 ? deep_indent : detail_indent, ' ');
    if (opens_with_number(line)) {
        return words + terms_wording(sources, file, line);
    }
    std::string head = head_wording(sources, line);
    if (syntax::is_prose(line.keyword)) {
        words += head + ":";
        if (!line.prose.empty()) {
            words += ' ';
            words += sources.slice(line.prose);
        }
        return words;
    }
    const std::string terms = terms_wording(sources, file, line);
    if (line.keyword == Keyword::photo) {
        return words + head + " " + terms; // a caption, not a fact of the list
    }
    if (!terms.empty()) {
        const std::size_t width = line.depth == 2 ? deep_keyword_width : detail_keyword_width;
        const std::size_t written = width_of(head);
        head.append(written < width ? width - written : 0, ' ');
        head += ' ';
    }
    return words + head + terms;
}

std::string joined_wording(const SourceMap& sources, const syntax::File& file, const Line& line) {
    const std::string terms = terms_wording(sources, file, line);
    return opens_with_number(line) ? terms : head_wording(sources, line) + " " + terms;
}

std::string prose_wording(const SourceMap& sources, const syntax::File& file, std::size_t number) {
    const Line& line = file.lines[number];
    // The block's least indented line starts where its prose does; the others keep what they have
    // beyond it.
    const std::uint32_t begin = sources.line_start(file.id, static_cast<std::uint32_t>(number) + 1);
    const std::size_t beyond = column_after(sources.slice({file.id, begin, line.whole.begin})) -
                               column_after(sources.slice({file.id, begin, line.prose.begin}));
    std::string words((line.depth == 2 ? deep_indent : detail_indent) + beyond, ' ');
    words += sources.slice(line.whole);
    return words;
}

bool HeadParts::may_add(Keyword keyword) const {
    switch (keyword) {
    case Keyword::in:
        return !carrier && !kind;
    case Keyword::only:
        return !variants && !kind;
    case Keyword::quantity:
        return !amount && !kind;
    case Keyword::kind_of:
    case Keyword::count:
        return !kind;
    default:
        return false;
    }
}

void HeadParts::add(Keyword keyword) {
    carrier = carrier || keyword == Keyword::in;
    variants = variants || keyword == Keyword::only;
    amount = amount || keyword == Keyword::quantity;
    kind = kind || keyword == Keyword::kind_of || keyword == Keyword::count;
}

HeadParts head_parts(const SourceMap& sources, const syntax::File& file, const Line& line) {
    HeadParts has;
    for (std::uint32_t at = 0; at < line.term_count; ++at) {
        const Term& term = file.terms[line.first_term + at];
        const std::string_view word = sources.slice(file.span_of(term));
        if (term.kind == TermKind::word) {
            has.carrier = has.carrier || word == "in";
            has.variants = has.variants || word == "only";
            has.kind = has.kind || word == "kind" || word == "x";
        } else if (term.kind == TermKind::number) {
            has.amount = true;
        }
    }
    return has;
}

} // namespace matchmark
