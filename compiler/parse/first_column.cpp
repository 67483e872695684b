// Reads the lines that start in the first column: declarations, and what was meant as one.
#include "parse/parser.hpp"

namespace matchmark::syntax {

void Parser::open_body(Keyword keyword) {
    body = opened_by(keyword);
    owner = spelling(keyword);
    body_indent = nowhere;
    photo_indent = nowhere;
    above = Keyword::none;
}

void Parser::declaration(std::size_t number) {
    const RawLine& raw = raws[number];
    Line& line = file.lines[number];
    const FirstWord first = first_word(scene(raw), raw.content);
    if (first.colon != 0) {
        colon(number, Body::first_column, first.word, first.colon);
        return;
    }
    const Found found = find_row(scene(raw), rows(Body::first_column), raw.content);
    if (found.row == nullptr) {
        unknown_declaration(number, first.word);
        return;
    }
    line.keyword = found.row->keyword;
    line.head = span(raw.content, raw.content + found.length);
    open_body(line.keyword);
    match(number, LineShape::declaration, line.head.end, found.row->rest);
    if (body == Body::message) {
        start_prose(number, 0, true);
    }
}

void Parser::unknown_declaration(std::size_t number, Span word) {
    const RawLine& raw = raws[number];
    Line& line = file.lines[number];
    line.head = word;
    const std::string name(scene(raw).slice(word));
    const Span start = span(raw.content, raw.content);
    if (find_row(scene(raw), rows(body), raw.content).row != nullptr && body != Body::unknown) {
        Diagnostic finding =
            syntax_finding("`" + name + "` is a detail of " + std::string(body_name(body)) +
                               ", and starts in the first column",
                           word);
        finding.help = "indent it";
        finding.edits.push_back({start, "  "});
        broken(number, std::move(finding));
        return;
    }
    Diagnostic finding = unknown_word(scene(raw), Body::first_column, word);
    Keyword meant = Keyword::none;
    if (!finding.edits.empty()) {
        for (const Row& candidate : rows(Body::first_column)) {
            meant = candidate.spelling == finding.edits.front().text ? candidate.keyword : meant;
        }
    }
    const std::string elsewhere = homes(name);
    if (meant == Keyword::none && body == Body::step && elsewhere.empty()) {
        finding.help = "indent it, if it is an action of the step above";
        finding.edits = {{start, "  "}};
        finding.safe = false;
        broken(number, std::move(finding));
        return;
    }
    if (meant == Keyword::none && !elsewhere.empty()) {
        finding.why = "`" + name + "` is a detail of " + elsewhere;
    }
    line.keyword = meant;
    broken(number, std::move(finding));
    open_body(meant);
    if (body == Body::message) {
        start_prose(number, 0, true);
    }
}

} // namespace matchmark::syntax
