// Reads the words of one line from left to right.
#include "syntax/reader.hpp"

namespace matchmark::syntax {

const Term* Reader::peek(std::uint32_t ahead) const {
    if (ahead >= line.term_count || index >= line.term_count - ahead) {
        return nullptr;
    }
    return &file.terms[line.first_term + index + ahead];
}

bool Reader::next_is(TermKind kind, std::uint32_t ahead) const {
    const Term* term = peek(ahead);
    return term != nullptr && term->kind == kind;
}

bool Reader::next_is_word(std::string_view word, std::uint32_t ahead) const {
    const Term* term = peek(ahead);
    return term != nullptr && term->kind == TermKind::word && text(file.span_of(*term)) == word;
}

std::string_view Reader::next_text(std::uint32_t ahead) const {
    const Term* term = peek(ahead);
    return term == nullptr ? std::string_view{} : text(file.span_of(*term));
}

Span Reader::here() const {
    if (const Term* term = peek()) {
        return file.span_of(*term);
    }
    Span place = line.head;
    if (line.term_count > 0) {
        place = file.span_of(file.terms[line.first_term + line.term_count - 1]);
    }
    place.begin = place.end;
    return place;
}

Span Reader::last() const {
    return index == 0 ? line.head : file.span_of(file.terms[line.first_term + index - 1]);
}

bool Reader::take_word(std::string_view word) {
    if (!next_is_word(word)) {
        return false;
    }
    ++index;
    return true;
}

std::optional<Span> Reader::take(TermKind kind) {
    if (!next_is(kind)) {
        return std::nullopt;
    }
    const Span span = file.span_of(*peek());
    ++index;
    return span;
}

std::optional<std::string> Reader::take_text(Span* where) {
    const std::optional<Span> span = take(TermKind::text);
    if (!span) {
        return std::nullopt;
    }
    if (where != nullptr) {
        *where = *span;
    }
    return unquoted(text(*span));
}

void Reader::skip() {
    if (!at_end()) {
        ++index;
    }
}

std::string unquoted(std::string_view quoted) {
    std::string plain;
    if (quoted.size() < 2) {
        return plain;
    }
    const std::string_view inside = quoted.substr(1, quoted.size() - 2);
    plain.reserve(inside.size());
    for (std::size_t at = 0; at < inside.size(); ++at) {
        if (inside[at] == '\\' && at + 1 < inside.size()) {
            ++at;
        }
        plain.push_back(inside[at]);
    }
    return plain;
}

} // namespace matchmark::syntax
