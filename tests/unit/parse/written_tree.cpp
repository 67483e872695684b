// A tree in words, so that a test can say in a string what a text is read as.
#include "unit/parse/written_tree.hpp"

#include <doctest/doctest.h>

#include <fstream>
#include <sstream>
#include <utility>

namespace matchmark::test {

namespace {

using syntax::Keyword;
using syntax::Line;
using syntax::LineShape;
using syntax::TermKind;

std::string_view shape_name(LineShape shape) {
    switch (shape) {
    case LineShape::blank:
        return "blank";
    case LineShape::comment:
        return "comment";
    case LineShape::declaration:
        return "declaration";
    case LineShape::detail:
        return "detail";
    case LineShape::prose:
        return "prose";
    case LineShape::broken:
        return "broken";
    }
    return "";
}

std::string_view kind_name(TermKind kind) {
    switch (kind) {
    case TermKind::word:
        return "word";
    case TermKind::name:
        return "name";
    case TermKind::number:
        return "number";
    case TermKind::unit:
        return "unit";
    case TermKind::text:
        return "text";
    case TermKind::comma:
        return "comma";
    case TermKind::range:
        return "range";
    case TermKind::arrow:
        return "arrow";
    case TermKind::plus:
        return "plus";
    case TermKind::minus:
        return "minus";
    }
    return "";
}

std::string opening(const Parsed& parsed, const Line& line) {
    switch (line.keyword) {
    case Keyword::none:
        return "";
    case Keyword::verb:
        return "verb " + std::string(parsed.sources.slice(line.head));
    case Keyword::count:
        return "count";
    case Keyword::quantity:
        return "quantity";
    default:
        return std::string(syntax::spelling(line.keyword));
    }
}

} // namespace

Parsed::Parsed(std::string text) {
    const FileId id = sources.add("bench.mmk", std::move(text));
    file = syntax::parse(sources, id, findings);
}

std::string written_line(const Parsed& parsed, std::size_t number) {
    const Line& line = parsed.file.lines.at(number);
    std::string words(shape_name(line.shape));
    if (line.shape != LineShape::blank && line.shape != LineShape::comment) {
        words += " " + std::to_string(line.depth);
    }
    const std::string opened = opening(parsed, line);
    words += opened.empty() ? "" : " " + opened;
    for (std::uint32_t at = 0; at < line.term_count; ++at) {
        const syntax::Term& term = parsed.file.terms.at(line.first_term + at);
        words += at == 0 ? ": " : ", ";
        words += kind_name(term.kind);
        if (term.kind != TermKind::comma) {
            words += " " + std::string(parsed.sources.slice(parsed.file.span_of(term)));
        }
    }
    if (line.prose.known()) {
        words += " {" + std::string(parsed.sources.slice(line.prose)) + "}";
    }
    if (line.comment.known()) {
        words += " " + std::string(parsed.sources.slice(line.comment));
    }
    return words;
}

std::string written(const Parsed& parsed) {
    std::string words;
    for (std::size_t number = 0; number < parsed.file.lines.size(); ++number) {
        words += written_line(parsed, number) + "\n";
    }
    return words;
}

void check_shapes(const std::string& head, const std::vector<Shape>& shapes) {
    for (const Shape& shape : shapes) {
        const Parsed parsed(head + shape.line + "\n");
        INFO(shape.line);
        for (const Diagnostic& finding : parsed.findings) {
            FAIL_CHECK(written_finding(parsed, finding));
        }
        CHECK(written_line(parsed, parsed.file.lines.size() - 1) == shape.tree);
    }
}

std::string written_finding(const Parsed& parsed, const Diagnostic& finding) {
    const Place begin = parsed.sources.place(finding.primary.file, finding.primary.begin);
    const Place end = parsed.sources.place(finding.primary.file, finding.primary.end);
    std::string words = std::to_string(begin.line) + ":" + std::to_string(begin.column) + "-" +
                        std::to_string(end.column) + " " + finding.message;
    if (!finding.help.empty()) {
        words += " | " + finding.help;
    }
    for (const Edit& edit : finding.edits) {
        const Place place = parsed.sources.place(edit.span.file, edit.span.begin);
        words += " | " + std::to_string(place.line) + ":" + std::to_string(place.column) + " `" +
                 std::string(parsed.sources.slice(edit.span)) + "` -> `" + edit.text + "`";
    }
    return words;
}

std::vector<std::string> examples_of(std::string_view path) {
    std::ifstream stream(std::string(MATCHMARK_SOURCE_DIR) + "/" + std::string(path));
    REQUIRE(stream.good());
    std::vector<std::string> examples;
    std::string line;
    bool inside = false;
    while (std::getline(stream, line)) {
        if (line.starts_with("```")) {
            inside = !inside;
            if (inside) {
                examples.emplace_back();
            }
        } else if (inside) {
            examples.back() += line + "\n";
        }
    }
    return examples;
}

} // namespace matchmark::test
