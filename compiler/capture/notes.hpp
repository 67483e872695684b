// Bench notes as they are typed or dictated: one line an action, in the order done.
//
// What the words of a line mean is decided in description.hpp; here lines become phrases. The
// forms that a line may take: docs/capturing.md.
#pragma once

#include "diagnostics/diagnostic.hpp"
#include "source/text.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::capture {

// In small letters, number words as digits.
struct Word {
    std::string text;
    Span span;
};

// What stands between two commas.
using Phrase = std::vector<Word>;

struct NotedLine {
    std::vector<Phrase> phrases; // none is empty; there is one at least
    bool putting_back = false;   // below `back:`
    Span span;                   // without bullet and number
};

// Kept word for word, and shown in the guide after the lines that stood above it.
struct Remark {
    std::string text;
    std::size_t after = 0; // lines above it
};

struct Notes {
    FileId file = Span::no_file;
    std::string device; // as after `device:`; empty: not said
    std::string base;   // `base: chassis`: what everything else is fastened to
    Phrase job;         // `job: replace cell`
    std::string reader; // `reader: trained`; empty: not said
    std::vector<NotedLine> lines;
    std::vector<Remark> remarks;
};

// Total: whatever the text, every line is an action, a head, a remark or blank.
Notes read_notes(const SourceMap& sources, FileId file);

// "N.m" and "nm" alike: the unit as the language writes it; empty when it is none.
std::string unit_named(const std::string& word);

} // namespace matchmark::capture
