// A finding as data: what is so, where, why it matters, and the edit that mends it.
// How it is shown (text, JSON) is decided in render.hpp.
#pragma once

#include "source/text.hpp"

#include <string>
#include <vector>

namespace matchmark {

enum class Severity : std::uint8_t { error, warning, advice };

// A second place that adds a fact, with a fragment of words: "come off here".
struct Mark {
    Span span;
    std::string label;

    friend bool operator==(const Mark&, const Mark&) = default;
};

// Replace the bytes of `span` with `text`. An empty span inserts.
struct Edit {
    Span span;
    std::string text;

    friend bool operator==(const Edit&, const Edit&) = default;
};

struct Diagnostic {
    std::string rule; // kebab-case name, "not-put-back"
    Severity severity = Severity::error;
    std::string message; // lower case, no full stop, stands alone
    Span primary;
    std::string label; // fragment under the primary mark; may be empty
    std::vector<Mark> related;
    std::string why;                   // one sentence about the bench; may be empty
    std::string help;                  // imperative, shown above the edits; may be empty
    std::vector<Edit> edits;           // all are applied by `mend`, or none
    bool safe = true;                  // false: `mend` asks for --all before it applies this
    std::vector<std::string> variants; // in which it occurs; empty: in all
};

// By file, place, then rule; stable, so that causes stand before their effects. Removes exact
// repeats.
void sort_findings(std::vector<Diagnostic>& findings);

[[nodiscard]] bool any_error(const std::vector<Diagnostic>& findings);

} // namespace matchmark
