// A tree in words, so that a test can say in a string what a text is read as.
#pragma once

#include "parse/parse.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace matchmark::test {

// A text, its tree and its findings, kept together.
struct Parsed {
    SourceMap sources;
    syntax::File file;
    std::vector<Diagnostic> findings;

    explicit Parsed(std::string text);
    [[nodiscard]] const std::string& text() const { return sources.file(file.id).text; }
};

// One line a line: `detail 1 covers: name board, comma, name cell # comment`.
std::string written(const Parsed& parsed);
// The same for one line (from 0).
std::string written_line(const Parsed& parsed, std::size_t number);

struct Shape {
    const char* line;
    const char* tree; // as written_line says it
};

// Each line below `head` reads, without a finding, as its tree.
void check_shapes(const std::string& head, const std::vector<Shape>& shapes);

// `line:column-column message | help | edits`; columns as people count, the end past the last
// character.
std::string written_finding(const Parsed& parsed, const Diagnostic& finding);

// The fenced blocks of a Markdown file of the project that are in the language.
std::vector<std::string> examples_of(std::string_view path);

} // namespace matchmark::test
