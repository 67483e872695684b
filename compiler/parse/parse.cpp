// Text to tree: reads one file of the language, line by line.
#include "parse/parse.hpp"

#include "parse/meant.hpp"
#include "parse/parser.hpp"
#include "parse/taken_otherwise.hpp"

#include <algorithm>

namespace matchmark::syntax {

File Parser::run() {
    file.id = id;
    file.lines.resize(raws.size());
    file.terms.reserve(text.size() / 8);
    for (std::size_t number = 0; number < raws.size(); ++number) {
        read(number);
    }
    end_prose(raws.size());
    return std::move(file);
}

void Parser::read(std::size_t number) {
    const RawLine& raw = raws[number];
    Line& line = file.lines[number];
    line.whole = span(raw.content, raw.end);
    line.first_term = static_cast<std::uint32_t>(file.terms.size());
    if (given_up(number)) {
        return;
    }
    if (raw.end - raw.begin > longest_line) {
        too_long(raw, line);
        return;
    }
    if (raw.blank() || goes_on_as_prose(number)) {
        return;
    }
    if (text[raw.content] == '#') {
        line.shape = LineShape::comment;
        line.depth = raw.indent == 0 ? 0 : 1;
        line.comment = line.whole;
        return;
    }
    end_prose(number);
    if (raw.indent == 0) {
        declaration(number);
    } else {
        detail(number);
    }
}

// So many slips are no guide with slips, but something else.
bool Parser::given_up(std::size_t number) {
    if (slips < most_slips || raws[number].blank()) {
        return slips >= most_slips;
    }
    if (slips == most_slips) {
        ++slips;
        end_prose(number);
        findings.push_back(syntax_finding(
            with_commas(most_slips) + " lines of this file make no sense; from here it is not read",
            file.lines[number].whole));
        findings.back().help = "mend those above; or is this a guide at all?";
    }
    file.lines[number].shape = LineShape::broken;
    return true;
}

void Parser::too_long(const RawLine& raw, Line& line) {
    ++slips;
    line.shape = LineShape::broken;
    findings.push_back(syntax_finding("this line is " + with_commas(raw.end - raw.begin) +
                                          " bytes long; the longest that is read is " +
                                          with_commas(longest_line),
                                      span(raw.content, raw.content)));
    findings.back().help = "break it into several lines";
    if (raw.indent <= prose.indent) {
        end_prose(static_cast<std::size_t>(&line - file.lines.data()));
    }
    if (raw.indent == 0) {
        body = Body::unknown;
        body_indent = nowhere;
        photo_indent = nowhere;
    }
}

// ---- prose ----

bool Parser::goes_on_as_prose(std::size_t number) {
    const RawLine& raw = raws[number];
    if (!prose.open || raw.indent <= prose.indent) {
        return false;
    }
    Line& line = file.lines[number];
    line.shape = prose.kept ? LineShape::prose : LineShape::broken;
    line.depth = prose.indent == 0 ? 1 : 2;
    return true;
}

void Parser::start_prose(std::size_t number, std::uint32_t indent, bool kept) {
    prose = {true, indent, number + 1, kept};
}

// The least indented line of a block gives the column from which its lines are read.
void Parser::end_prose(std::size_t number) {
    if (!prose.open) {
        return;
    }
    prose.open = false;
    std::uint32_t least = nowhere;
    for (std::size_t at = prose.first; at < number; ++at) {
        if (file.lines[at].shape == LineShape::prose) {
            least = std::min(least, raws[at].indent);
        }
    }
    for (std::size_t at = prose.first; at < number; ++at) {
        if (file.lines[at].shape == LineShape::prose) {
            file.lines[at].prose = span(offset_of_column(text, raws[at], least), raws[at].end);
        }
    }
}

// ---- what every line has in common ----

void Parser::broken(std::size_t number, Diagnostic finding) {
    ++slips;
    Line& line = file.lines[number];
    line.shape = LineShape::broken;
    line.comment = {};
    line.term_count = 0;
    file.terms.resize(line.first_term);
    finding.message = printable(std::move(finding.message));
    finding.why = printable(std::move(finding.why));
    finding.help = printable(std::move(finding.help));
    findings.push_back(std::move(finding));
}

// Names and numbers of which nobody could say whether they are right.
bool Parser::too_long_a_term(std::size_t number) {
    const std::uint32_t first = file.lines[number].first_term;
    for (std::size_t at = first; at < file.terms.size(); ++at) {
        const Term& term = file.terms[at];
        const std::size_t length = term.length;
        const bool is_name = term.kind == TermKind::name;
        const std::size_t most = is_name ? longest_name : longest_number;
        if (length <= most || (!is_name && term.kind != TermKind::number)) {
            continue;
        }
        const Span where = file.span_of(term);
        Diagnostic finding = syntax_finding(
            std::string(is_name ? "this name" : "this number") + " is " + with_commas(length) +
                " bytes long; the longest that is read is " + with_commas(most),
            where);
        finding.help = is_name ? "find a shorter name" : "round it";
        broken(number, std::move(finding));
        return true;
    }
    return false;
}

// Reads what follows the head with one rule of the grammar.
bool Parser::match(std::size_t number, LineShape shape, std::uint32_t begin, Matcher rest) {
    const RawLine& raw = raws[number];
    Line& line = file.lines[number];
    while (begin < raw.end && (text[begin] == ' ' || text[begin] == '\t')) {
        ++begin;
    }
    Matching matching{file.terms, line.comment, id, text.data(), nullptr};
    const Slip slip = rest(matching, begin, raw.end);
    if (slip.expected == nullptr) {
        if (too_long_a_term(number)) {
            return false;
        }
        const Body read_in = shape == LineShape::declaration ? Body::first_column : body;
        if (auto finding =
                taken_otherwise(scene(raw), read_in, line.keyword, line.whole, line.comment)) {
            broken(number, std::move(*finding));
            return false;
        }
        line.shape = shape;
        line.term_count = static_cast<std::uint32_t>(file.terms.size()) - line.first_term;
        return true;
    }
    const Span before =
        file.terms.size() > line.first_term ? file.span_of(file.terms.back()) : line.head;
    Diagnostic finding = slip_finding(scene(raw), slip, before);
    const Body here = shape == LineShape::declaration ? Body::first_column
                      : line.depth == 2               ? Body::photo
                                                      : body;
    offer_meant(finding, scene(raw), {here, line.keyword, line.whole, before, slip});
    broken(number, std::move(finding));
    return false;
}

File parse(const SourceMap& sources, FileId id, std::vector<Diagnostic>& findings) {
    return Parser{.sources = sources, .id = id, .findings = findings}.run();
}

} // namespace matchmark::syntax
