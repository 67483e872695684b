// Reads the word or words that open a line.
#pragma once

#include "parse/slips.hpp"

#include <string_view>
#include <vector>

namespace matchmark::syntax {

struct FirstWord {
    Span word;               // what stands there, if only a sign
    std::uint32_t colon = 0; // byte offset of a colon that follows; 0 if none does
};
FirstWord first_word(const Scene& scene, std::uint32_t at);

// The row whose keyword stands at `at`, and how many bytes its words take there.
struct Found {
    const Row* row = nullptr;
    std::uint32_t length = 0;
};
Found find_row(const Scene& scene, const std::vector<Row>& among, std::uint32_t at);

// The same in all bodies but the first column: a detail that stands elsewhere.
Found find_anywhere(const Scene& scene, std::uint32_t at);

// A keyword of several words of which only the first ones stand there.
struct Half {
    const Row* row = nullptr;
    Span read;                // the words that stand there
    std::string_view missing; // the word that should follow them
    std::uint32_t at = 0;     // where it should stand
};
Half half_matched(const Scene& scene, const std::vector<Row>& among, Span word);

// The word has the shape of a name, and is none of the words that tie a line together.
bool is_verb(const Scene& scene, Span word);
// `with`, `to`, `for` and the like: never a verb.
bool is_joining_word(std::string_view word);
// `part`, `step` and so on; not words that trades use as verbs too, such as `work` and `drive`.
bool starts_declaration(std::string_view word);

// The digits (and decimals) that start at `at`.
Span number_at(const Scene& scene, std::uint32_t at);
// `x`, after spaces, and no further letter.
bool times_follows(const Scene& scene, std::uint32_t at);

} // namespace matchmark::syntax
