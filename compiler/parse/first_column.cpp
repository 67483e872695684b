// Reads the lines that start in the first column: declarations, and what was meant as one.
#include "model/spelling.hpp"
#include "parse/meant.hpp"
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

// `1. Open the lid`, and words for the reader that stand under nothing.
bool Parser::list_or_sentence(std::size_t number, Diagnostic& finding) {
    const RawLine& raw = raws[number];
    const Span whole = file.lines[number].whole;
    const std::string_view line = scene(raw).slice(whole);
    const std::size_t words = line.find_first_not_of("0123456789.) \t");
    if (words != 0 && words != std::string_view::npos) {
        const std::string title(line.substr(words));
        const std::string name = model::name_from(title, "step");
        if (name.empty() || title.find('"') != std::string::npos) {
            return false;
        }
        finding.help =
            "write `step " + name + " \"" + title + "\"`; the steps are numbered on the page";
        finding.edits = {{whole, "step " + name + " \"" + title + "\""}};
        finding.safe = false;
        return true;
    }
    if (!is_sentence(scene(raw), whole)) {
        return false;
    }
    finding.message = "this is a sentence, and a declaration stands here";
    finding.primary = whole;
    finding.help = "indent it under its guide, part or step, behind `text:`; a note to yourself "
                   "stands behind `#`";
    if (takes_prose(body) && body != Body::unknown) {
        finding.edits = {{span(whole.begin, whole.begin), "  text: "}};
        finding.safe = false;
    }
    return true;
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
    if (const MeantDeclaration said = meant_declaration(scene(raw), word); !said.word.empty()) {
        finding.edits.clear();
        offer(finding, said.instead_of, said.word, false);
    }
    if (!finding.edits.empty()) {
        for (const Row& candidate : rows(Body::first_column)) {
            meant = candidate.spelling == finding.edits.front().text ? candidate.keyword : meant;
        }
    }
    const std::string elsewhere = homes(name);
    if (meant == Keyword::none && elsewhere.empty() && list_or_sentence(number, finding)) {
        const bool is_step = !finding.edits.empty() && finding.edits.front().span == line.whole;
        broken(number, std::move(finding));
        if (is_step) {
            open_body(Keyword::step);
        }
        return;
    }
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
