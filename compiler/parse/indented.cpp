// Reads the indented lines: details, actions, prose, and what was meant as one of them.
#include "parse/examples.hpp"
#include "parse/meant.hpp"
#include "parse/parser.hpp"

namespace matchmark::syntax {

void Parser::detail(std::size_t number) {
    const RawLine& raw = raws[number];
    Line& line = file.lines[number];
    const FirstWord first = first_word(scene(raw), raw.content);
    if (!fits_indentation(number, line)) {
        if (first.colon != 0) {
            start_prose(number, raw.indent, false);
        }
        return;
    }
    const Body here = line.depth == 2 ? Body::photo : body;
    if (first.colon != 0) {
        colon(number, here, first.word, first.colon);
        return;
    }
    const Found found = find_row(scene(raw), rows(here), raw.content);
    if (found.row != nullptr) {
        keyed(number, here, *found.row, found.length);
    } else {
        unkeyed(number, here, first.word);
    }
    above = line.keyword;
}

// Finds out whether the line is a detail, or a detail of the photo above. Reports one that is
// neither.
bool Parser::fits_indentation(std::size_t number, Line& line) {
    const RawLine& raw = raws[number];
    const Span first = token_at(scene(raw), raw.content);
    line.depth = 1;
    if (body == Body::first_column) {
        broken(number,
               syntax_finding("this line is indented, and no declaration stands above it", first));
        findings.back().help = "start it in the first column";
        findings.back().edits.push_back({span(raw.begin, raw.content), ""});
        return false;
    }
    if (body == Body::bare) {
        broken(number, syntax_finding("`" + std::string(owner) + "` takes no details", first));
        findings.back().help = "write it under the `part`, `fastener` or `step` that it belongs to";
        return false;
    }
    if (photo_indent != nowhere && raw.indent > photo_indent) {
        line.depth = 2;
        return true;
    }
    photo_indent = nowhere;
    if (body_indent == nowhere || raw.indent <= body_indent || body == Body::unknown) {
        body_indent = raw.indent;
        return true;
    }
    const std::string_view word = above == Keyword::none ? std::string_view{} : spelling(above);
    const std::string holder = word.empty() ? "the line above" : "`" + std::string(word) + "`";
    broken(number, syntax_finding("this line is indented deeper than the details above it, and " +
                                      holder + " takes none of its own",
                                  first));
    mend_indentation(number);
    body_indent = raw.indent; // one finding for a run of such lines
    return false;
}

// A line that opens with `when`, `in` and the like goes on from the line above; any other is a
// detail of its own.
void Parser::mend_indentation(std::size_t number) {
    const RawLine& raw = raws[number];
    Diagnostic& finding = findings.back();
    const Span first = first_word(scene(raw), raw.content).word;
    const Line& before = file.lines[number - 1];
    if (is_joining_word(scene(raw).slice(first)) && before.shape == LineShape::detail &&
        !before.comment.known() && !is_prose(before.keyword)) {
        finding.help = "write it on the line above";
        finding.edits.push_back({span(before.whole.end, raw.content), " "});
        return;
    }
    finding.help = "indent it as the lines above";
    finding.edits.push_back({span(raw.begin, raw.content), std::string(body_indent, ' ')});
}

// A word with a colon: prose, or a slip for it. Deeper lines belong to it either way.
void Parser::colon(std::size_t number, Body here, Span word, std::uint32_t colon_at) {
    const RawLine& raw = raws[number];
    Line& line = file.lines[number];
    const Keyword keyword = prose_keyword(scene(raw).slice(word));
    line.head = word;
    line.keyword = keyword;
    if (keyword != Keyword::none && takes_prose(here)) {
        line.shape = LineShape::detail;
        std::uint32_t begin = colon_at + 1;
        while (begin < raw.end && (text[begin] == ' ' || text[begin] == '\t')) {
            ++begin;
        }
        line.prose = span(begin, raw.end);
        above = keyword;
        start_prose(number, raw.indent, true);
        return;
    }
    const std::string name(scene(raw).slice(word));
    const Found found = find_row(scene(raw), rows(here), raw.content);
    if (keyword == Keyword::none && found.row != nullptr) {
        broken(number,
               syntax_finding("`" + name + "` takes no colon", span(colon_at, colon_at + 1)));
        findings.back().help = "leave the colon out";
        findings.back().edits.push_back({span(colon_at, colon_at + 1), ""});
        if (here == Body::first_column) {
            open_body(found.row->keyword);
        }
        return;
    }
    if (keyword == Keyword::none) {
        broken(number, unknown_prose(scene(raw), word));
    } else if (here == Body::first_column) {
        broken(number, syntax_finding("`" + name +
                                          ":` starts in the first column, and belongs "
                                          "to a declaration",
                                      word));
        findings.back().help = "indent it";
        findings.back().edits.push_back({span(raw.content, raw.content), "  "});
    } else {
        broken(number,
               syntax_finding(
                   "`" + name + ":` does not stand under " + std::string(body_name(here)), word));
        findings.back().help = "write it under a part, a guide or a step";
    }
    start_prose(number, raw.indent, false);
}

void Parser::keyed(std::size_t number, Body here, const Row& found, std::uint32_t length) {
    const RawLine& raw = raws[number];
    Line& line = file.lines[number];
    line.keyword = found.keyword;
    line.head = span(raw.content, raw.content + length);
    if (here != Body::photo) {
        photo_indent = line.keyword == Keyword::photo ? raw.indent : nowhere;
    }
    match(number, LineShape::detail, line.head.end, found.rest);
}

// Would a line of a step that begins with it be read as something other than an action?
bool starts_other_lines(std::string_view word) {
    return starts_declaration(word) || prose_keyword(word) != Keyword::none || word == "photo";
}

// A line that opens with a number, a verb, or a word that may not stand here.
void Parser::unkeyed(std::size_t number, Body here, Span word) {
    const RawLine& raw = raws[number];
    Line& line = file.lines[number];
    const bool items = here >= Body::part && here <= Body::energy;
    if (here == Body::unknown) {
        line.shape = LineShape::broken; // its declaration was reported
        line.head = word;
        return;
    }
    if (items && text[raw.content] >= '0' && text[raw.content] <= '9') {
        numbered(number, here);
        return;
    }
    if (half_a_keyword(number, here, word)) {
        return;
    }
    const bool verb = is_verb(scene(raw), word);
    const bool arrow = scene(raw).slice(raw.content, raw.end).find("->") != std::string_view::npos;
    const bool taken = starts_other_lines(scene(raw).slice(word));
    if (here == Body::kind && verb && arrow) {
        line.keyword = Keyword::verb;
        line.head = word;
        if (taken) {
            verb_is_taken(number, word);
        } else {
            match(number, LineShape::detail, word.end, match_verb_definition);
        }
    } else if (here == Body::step && verb && !taken) {
        action(number, word);
    } else {
        not_a_detail(number, here, word);
    }
}

// An action that begins with such a word could not be read.
void Parser::verb_is_taken(std::size_t number, Span word) {
    const std::string name(scene(raws[number]).slice(word));
    Diagnostic finding =
        syntax_finding("`" + name + "` is a word of the language and cannot be a verb", word);
    finding.why = "no action could begin with it";
    finding.help = "give the verb another name, such as `" + name + "-on`";
    broken(number, std::move(finding));
}

void Parser::numbered(std::size_t number, Body here) {
    const RawLine& raw = raws[number];
    Line& line = file.lines[number];
    line.head = number_at(scene(raw), raw.content);
    const bool amount = here == Body::fluid && !times_follows(scene(raw), line.head.end);
    line.keyword = amount ? Keyword::quantity : Keyword::count;
    match(number, LineShape::detail, raw.content, amount ? match_amount : match_count);
}

void Parser::action(std::size_t number, Span word) {
    Line& line = file.lines[number];
    line.keyword = Keyword::verb;
    line.head = word;
    match(number, LineShape::detail, word.end, action_matcher(scene(raws[number]).slice(word)));
}

// The first word of a keyword of several, `binds` without `in`.
bool Parser::half_a_keyword(std::size_t number, Body here, Span word) {
    const Half half = half_matched(scene(raws[number]), rows(here), word);
    if (half.row == nullptr) {
        return false;
    }
    Line& line = file.lines[number];
    line.head = word;
    line.keyword = half.row->keyword;
    const std::string expected = "`" + std::string(half.missing) + "`";
    Diagnostic finding = slip_finding(scene(raws[number]), {expected.c_str(), half.at}, half.read);
    if (finding.help.empty()) {
        finding.help =
            "a line of this sort: `" + std::string(example_line(here, line.keyword)) + "`";
    }
    broken(number, std::move(finding));
    return true;
}

// An action with a dash or a number before it, as in a list.
bool Parser::mend_bullet(std::size_t number, Span word) {
    const RawLine& raw = raws[number];
    const std::string_view sign = scene(raw).slice(word);
    const bool dash = sign == "-" || sign == "*" || sign == "\xE2\x80\xA2";
    const bool numbered = sign.find_first_not_of("0123456789.") == std::string_view::npos;
    if ((!dash && !numbered) || word.end == raw.end) {
        return false;
    }
    std::uint32_t end = word.end;
    while (end < raw.end && std::string_view(" \t.)").find(text[end]) != std::string_view::npos) {
        ++end;
    }
    Diagnostic finding = syntax_finding(
        std::string(dash ? "a dash" : "a number") + " stands before the action", word);
    finding.help = "leave it out; actions are done in the order in which they stand";
    finding.edits.push_back({span(word.begin, end), ""});
    broken(number, std::move(finding));
    return true;
}

void Parser::not_a_detail(std::size_t number, Body here, Span word) {
    const RawLine& raw = raws[number];
    const Found elsewhere = find_anywhere(scene(raw), raw.content);
    if (elsewhere.row != nullptr) {
        word = span(raw.content, raw.content + elsewhere.length);
    }
    const std::string name(elsewhere.row != nullptr ? elsewhere.row->spelling
                                                    : scene(raw).slice(word));
    file.lines[number].head = word;
    Diagnostic finding;
    if (here == Body::step && mend_bullet(number, word)) {
        return;
    }
    if (prose_keyword(name) != Keyword::none && takes_prose(here)) {
        file.lines[number].keyword = prose_keyword(name);
        finding = syntax_finding("expected `:` after `" + name + "`", span(word.end, word.end));
        finding.help = "write `" + name + ":`";
        finding.edits.push_back({span(word.end, word.end), ":"});
        broken(number, std::move(finding));
        start_prose(number, raw.indent, false);
        return;
    }
    if (starts_declaration(name)) {
        finding = syntax_finding(
            "`" + name + "` starts a declaration, and does not start in the first column", word);
        finding.help = "start it in the first column";
        finding.edits.push_back({span(raw.begin, raw.content), ""});
    } else if (here == Body::step && is_joining_word(name)) {
        finding = syntax_finding("expected a verb, found `" + name + "`", word);
        finding.help = "`" + name + "` belongs on the line of its action";
    } else if (here == Body::section || here == Body::put_back) {
        finding = unknown_word(scene(raw), here, word);
        if (finding.edits.empty()) {
            finding = syntax_finding("`" + name + "` stands in no step", word);
            finding.help = "write `step NAME` in the first column above it";
        }
    } else if (elsewhere.row != nullptr) {
        finding = misplaced_detail(name, here, word);
    } else if (takes_prose(here) && is_sentence(scene(raw), file.lines[number].whole)) {
        finding = syntax_finding("this is a sentence, and a detail of " +
                                     std::string(body_name(here)) + " stands here",
                                 file.lines[number].whole);
        offer_prose(finding, file.lines[number].whole);
    } else {
        finding = unknown_word(scene(raw), here, word);
        if (finding.edits.empty() && here == Body::kind && is_verb(scene(raw), word)) {
            file.lines[number].keyword = Keyword::verb;
            match(number, LineShape::detail, word.end, match_verb_definition);
            return;
        }
    }
    broken(number, std::move(finding));
}

} // namespace matchmark::syntax
