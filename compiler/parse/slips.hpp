// Puts a syntax error into words: what was expected, what was found, and how to mend it.
#pragma once

#include "diagnostics/diagnostic.hpp"
#include "parse/bodies.hpp"

#include <string>
#include <string_view>

namespace matchmark::syntax {

// The line in which an error stands.
struct Scene {
    std::string_view text; // the whole file
    FileId file = 0;
    std::uint32_t end = 0; // of the line's content

    [[nodiscard]] Span span(std::uint32_t from, std::uint32_t to) const { return {file, from, to}; }
    [[nodiscard]] std::string_view slice(std::uint32_t from, std::uint32_t to) const {
        return text.substr(from, to - from);
    }
    [[nodiscard]] std::string_view slice(Span where) const { return slice(where.begin, where.end); }
};

// The word, number, text or sign that stands at `at`; empty at the end of the line or before a
// comment.
Span token_at(const Scene& scene, std::uint32_t at);

// An error of rule "syntax" with a message and a place, and nothing else yet.
Diagnostic syntax_finding(std::string message, Span where);

// "expected a tool after `with`, found end of line"; `before` is the term or keyword that stands
// before.
Diagnostic slip_finding(const Scene& scene, const Slip& slip, Span before);

// A word that opens no line here: says what may, and offers the nearest.
Diagnostic unknown_word(const Scene& scene, Body body, Span word);

// A detail that stands under other declarations than this one.
Diagnostic misplaced_detail(const std::string& name, Body body, Span word);

// `txet:` for `text:`.
Diagnostic unknown_prose(const Scene& scene, Span word);

// Adds "write `WORD`" and the edit that does it.
void offer(Diagnostic& finding, Span wrong, std::string_view word, bool safe);

// The words with each byte that is not UTF-8 replaced by `?`.
std::string printable(std::string words);

// "65,536"
std::string with_commas(std::size_t number);

} // namespace matchmark::syntax
