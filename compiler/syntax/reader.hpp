// Reads the words of one line from left to right, as a person does.
//
// Every `take_...` moves on only if the next term is what was asked for, and otherwise leaves it
// where it is.
#pragma once

#include "source/text.hpp"
#include "syntax/tree.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace matchmark::syntax {

struct Reader {
    const SourceMap& sources;
    const File& file;
    const Line& line;
    std::uint32_t index = 0; // of the next term, counted from the line's first

    [[nodiscard]] bool at_end() const { return index >= line.term_count; }
    // The term `ahead` places after the next one; null past the end of the line.
    [[nodiscard]] const Term* peek(std::uint32_t ahead = 0) const;
    [[nodiscard]] bool next_is(TermKind kind, std::uint32_t ahead = 0) const;
    // The next term is this fixed word of the grammar: `with`, `to`.
    [[nodiscard]] bool next_is_word(std::string_view word, std::uint32_t ahead = 0) const;
    // The next term's bytes as written (quotes included); empty past the end.
    [[nodiscard]] std::string_view next_text(std::uint32_t ahead = 0) const;
    // The next term's span; past the end, the empty span just after the line's last term (or its
    // head).
    [[nodiscard]] Span here() const;
    // The span of the term taken last; the head's if none was.
    [[nodiscard]] Span last() const;

    bool take_word(std::string_view word);
    // Takes one fixed word, whichever it is.
    std::optional<Span> take_any_word() { return take(TermKind::word); }
    std::optional<Span> take_name() { return take(TermKind::name); }
    // A number without its unit; the unit, if any, is the next term.
    std::optional<Span> take_number() { return take(TermKind::number); }
    std::optional<Span> take_unit() { return take(TermKind::unit); }
    bool take_comma() { return take(TermKind::comma).has_value(); }
    std::optional<Span> take(TermKind kind);
    // The words between the quotes, with `\"` and `\\` undone. `where`, if given, gets the quoted
    // span.
    std::optional<std::string> take_text(Span* where = nullptr);
    // Moves on whatever the next term is; does nothing at the end.
    void skip();

    [[nodiscard]] std::string_view text(Span span) const { return sources.slice(span); }
};

// The words between the quotes of a text term, with `\"` and `\\` undone.
std::string unquoted(std::string_view quoted);

} // namespace matchmark::syntax
