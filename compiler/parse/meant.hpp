// What whoever writes the language for the first time meant by a line that makes no sense: a text
// without quotes, a sentence where an action stands, a name of two words.
#pragma once

#include "parse/slips.hpp"

#include <string>

namespace matchmark::syntax {

// A line that was read up to a slip.
struct Misread {
    Body body = Body::unknown;
    Keyword keyword = Keyword::none;
    Span line;   // without its indentation
    Span before; // the term or keyword before the slip
    Slip slip;
};

// Adds to a finding without help the line that was meant, or else a line of its sort.
void offer_meant(Diagnostic& finding, const Scene& scene, const Misread& misread);

// Several words without a sign of the language between them, as a sentence has.
bool is_sentence(const Scene& scene, Span line);

// Says that a sentence stands behind `text:`.
void offer_prose(Diagnostic& finding, Span line);

// The declaration that is meant by a word of the trade, or by two words for one: "put-back" for
// `put back` and `reassemble`. Empty if none is.
struct MeantDeclaration {
    std::string_view word;
    Span instead_of;
};
MeantDeclaration meant_declaration(const Scene& scene, Span word);

} // namespace matchmark::syntax
