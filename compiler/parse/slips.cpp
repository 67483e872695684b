// Puts a syntax error into words: what was expected, what was found, and how to mend it.
#include "parse/slips.hpp"

#include "diagnostics/nearest.hpp"
#include "parse/examples.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>
#include <fmt/core.h>
#include <utility>
#include <vector>

namespace matchmark::syntax {

namespace {

constexpr std::size_t longest_shown = 40; // bytes of the source quoted in a message

// Signs that editors and word processors put in unasked, and what is meant.
struct Typographic {
    std::string_view sign;
    std::string_view name;
    std::string_view meant;
};
constexpr auto typographic_signs = std::to_array<Typographic>({
    {"\xC2\xA0", "a no-break space", " "},
    {"\xE2\x80\xAF", "a narrow no-break space", " "},
    {"\xE3\x80\x80", "a wide space", " "},
    {"\xE2\x80\x9C", "a curly quote", "\""},
    {"\xE2\x80\x9D", "a curly quote", "\""},
    {"\xE2\x80\x9E", "a low quote", "\""},
    {"\xC2\xAB", "an angle quote", "\""},
    {"\xC2\xBB", "an angle quote", "\""},
    {"\xE2\x80\x93", "a dash", "-"},
    {"\xE2\x88\x92", "a minus sign that is no hyphen", "-"},
    {"\xE2\x86\x92", "an arrow sign", "->"},
    {"\xC3\x97", "a multiplication sign", "x"},
    {"\xE2\x80\xA6", "an ellipsis", ".."},
    {"\xEF\xBC\x8C", "a wide comma", ","},
    {"\xE3\x80\x81", "an ideographic comma", ","},
});

const Typographic* typographic_at(std::string_view rest) {
    if (rest.empty() || (static_cast<unsigned char>(rest[0]) & 0x80U) == 0) {
        return nullptr; // none of them is in ASCII
    }
    for (const Typographic& candidate : typographic_signs) {
        if (rest.starts_with(candidate.sign)) {
            return &candidate;
        }
    }
    return nullptr;
}

bool ends_token(char byte) {
    static constexpr std::string_view stops = " \t\r\n\",#:;()[]{}=";
    return stops.find(byte) != std::string_view::npos;
}

bool digit_at(std::string_view text, std::size_t at) {
    return at < text.size() && std::isdigit(static_cast<unsigned char>(text[at])) != 0;
}

// The end of a text that opens at `at`; npos if it is never closed.
std::size_t closing_quote(std::string_view line, std::size_t at) {
    for (std::size_t next = at + 1; next < line.size(); ++next) {
        if (line[next] == '\\') {
            ++next;
        } else if (line[next] == '"') {
            return next;
        }
    }
    return std::string_view::npos;
}

// Not longer than fits in a message, cut between characters, and printable whatever is in it.
std::string in_ticks(std::string_view words) {
    std::string shown(words);
    if (shown.size() > longest_shown) {
        std::size_t cut = longest_shown;
        while (cut > 0 && (static_cast<unsigned char>(shown[cut]) & 0xC0U) == 0x80U) {
            --cut;
        }
        shown.resize(cut);
        shown += "...";
    }
    return "`" + shown + "`";
}

std::string hexadecimal(char byte) {
    static constexpr std::string_view digits = "0123456789abcdef";
    const auto value = static_cast<unsigned char>(byte);
    return std::string("byte 0x") + digits[value >> 4U] + digits[value & 0xFU];
}

std::string found_words(const Scene& scene, Span found) {
    const std::string_view token = scene.slice(found);
    if (token.empty()) {
        return "end of line";
    }
    if (const Typographic* sign = typographic_at(token)) {
        return std::string(sign->name);
    }
    if (first_unreadable_byte(token) != std::string_view::npos) {
        return hexadecimal(token[first_unreadable_byte(token)]);
    }
    return in_ticks(token);
}

// The fixed words that a message names, and those that may go on where a line should have ended.
std::vector<std::string> words_wanted(std::string_view expected) {
    std::vector<std::string> wanted;
    std::size_t open = expected.find('`');
    while (open != std::string_view::npos) {
        const std::size_t close = expected.find('`', open + 1);
        wanted.emplace_back(expected.substr(open + 1, close - open - 1));
        open = expected.find('`', close + 1);
    }
    if (expected == expected_words<g::role>) {
        wanted = {"part", "fastener", "connector", "bond", "fluid", "energy"};
    }
    if (expected.ends_with("the end of the line") && expected != expected_words<g::end_of_head>) {
        for (const char* word :
             {"with", "to", "in", "for", "through", "below", "above", "as", "across", "passes",
              "by", "from", "takes", "waits", "safe", "when", "on", "only", "or"}) {
            wanted.emplace_back(word);
        }
    }
    return wanted;
}

bool mend_typography(Diagnostic& finding, const Scene& scene, Span found) {
    const Typographic* first = typographic_at(scene.slice(found));
    if (first == nullptr) {
        return false;
    }
    if (first->meant == "->" && finding.message.find("`->`") == std::string::npos) {
        return true; // no arrow belongs here
    }
    finding.help = "write `" + std::string(first->meant) + "`";
    if (first->meant == " ") {
        finding.help = "write a plain space";
    }
    // Quotes come in twos: both are mended, up to the end of the line.
    std::uint32_t at = found.begin;
    while (at < scene.end) {
        const Typographic* sign = typographic_at(scene.slice(at, scene.end));
        if (sign == nullptr) {
            ++at;
            continue;
        }
        const auto size = static_cast<std::uint32_t>(sign->sign.size());
        if (sign->meant == first->meant) {
            finding.edits.push_back({scene.span(at, at + size), std::string(sign->meant)});
        }
        if (first->meant != "\"" && !finding.edits.empty()) {
            break;
        }
        at += size;
    }
    return true;
}

bool mend_unclosed_text(Diagnostic& finding, const Scene& scene, std::uint32_t at) {
    const std::string_view rest = scene.slice(at, scene.end);
    if (!rest.starts_with('"') || closing_quote(rest, 0) != std::string_view::npos) {
        return false;
    }
    finding.message = "the text that starts here has no closing `\"`";
    finding.primary = scene.span(at, scene.end);
    finding.help = "close it";
    finding.edits.push_back({scene.span(scene.end, scene.end), "\""});
    finding.safe = false; // where it was meant to end is a guess
    return true;
}

bool mend_decimal_comma(Diagnostic& finding, const Scene& scene, Span found, Span before) {
    const std::string_view text = scene.text;
    if (scene.slice(found) != "," || before.end != found.begin || before.empty() ||
        !digit_at(text, before.end - 1) || !digit_at(text, found.end)) {
        return false;
    }
    std::uint32_t end = found.end;
    while (digit_at(text, end)) {
        ++end;
    }
    finding.help = "write a decimal point: `" + std::string(scene.slice(before)) + "." +
                   std::string(scene.slice(found.end, end)) + "`";
    finding.edits.push_back({found, "."});
    return true;
}

// "25..28 N.m" where one number is asked for.
bool mend_range(Diagnostic& finding, const Scene& scene, Span found, Span before) {
    const std::string_view text = scene.text;
    if (scene.slice(found) != ".." || before.end != found.begin || before.empty() ||
        !digit_at(text, before.end - 1) || !digit_at(text, found.end))
        return false;
    double least = 0;
    double most = 0;
    const auto number = [&](std::uint32_t begin, std::uint32_t end, double& value) {
        return std::from_chars(text.data() + begin, text.data() + end, value);
    };
    const auto first = number(before.begin, before.end, least);
    const auto second = number(found.end, scene.end, most);
    if (first.ptr != text.data() + before.end || second.ec != std::errc())
        return false;
    const auto end = static_cast<std::uint32_t>(second.ptr - text.data());
    finding.help = "one number stands here: the middle of the range, if the maker gives no other";
    finding.edits.push_back(
        {scene.span(before.begin, end), fmt::format("{:g}", (least + most) / 2)});
    finding.safe = false; // which number is meant is a guess
    return true;
}

bool mend_sign_in_name(Diagnostic& finding, const Scene& scene, Span found, Span before) {
    const std::string_view token = scene.slice(found);
    if (before.end != found.begin || token.size() < 2 || token == ".." ||
        (token[0] != '_' && token[0] != '.')) {
        return false;
    }
    finding.help = "a name has letters, digits and hyphens";
    std::uint32_t at = found.begin;
    while (at < found.end && scene.text[at] != '_' && scene.text[at] != '.') {
        ++at;
    }
    finding.edits.push_back({scene.span(at, at + 1), "-"});
    finding.safe = false; // the name may be used elsewhere
    return true;
}

void mend_misspelt(Diagnostic& finding, const Scene& scene, std::string_view expected, Span found) {
    const std::string_view token = scene.slice(found);
    if (token.empty() || token.starts_with('"')) {
        return;
    }
    const std::string meant = nearest(token, words_wanted(expected));
    if (!meant.empty() && meant != token) {
        offer(finding, found, meant, false);
    }
}

// "`kind`, `in`, `covers`", and prose if it may stand there.
std::string what_may_stand(Body body) {
    std::string listed;
    for (const Row& candidate : rows(body)) {
        listed += listed.empty() ? "`" : ", `";
        listed += std::string(candidate.spelling) + "`";
    }
    if (takes_prose(body)) {
        listed += listed.empty() ? "prose such as `note:`" : ", and prose such as `note:`";
    }
    return listed;
}

} // namespace

Span token_at(const Scene& scene, std::uint32_t at) {
    const std::string_view line = scene.slice(at, scene.end);
    if (line.empty() || line[0] == '#') {
        return scene.span(at, at);
    }
    std::size_t length = 0;
    if (line[0] == '"') {
        const std::size_t close = closing_quote(line, 0);
        length = close == std::string_view::npos ? line.size() : close + 1;
    } else if (const Typographic* sign = typographic_at(line)) {
        length = sign->sign.size();
    } else if (line.starts_with("->") || line.starts_with("..")) {
        length = 2;
    } else {
        while (length < line.size() && !ends_token(line[length]) &&
               typographic_at(line.substr(length)) == nullptr) {
            ++length;
        }
        length = std::max<std::size_t>(length, 1);
    }
    return scene.span(at, at + static_cast<std::uint32_t>(length));
}

Diagnostic syntax_finding(std::string message, Span where) {
    Diagnostic finding;
    finding.rule = "syntax";
    finding.message = std::move(message);
    finding.primary = where;
    return finding;
}

void offer(Diagnostic& finding, Span wrong, std::string_view word, bool safe) {
    finding.help = "write `" + std::string(word) + "`";
    finding.edits.push_back({wrong, std::string(word)});
    finding.safe = safe;
}

Diagnostic slip_finding(const Scene& scene, const Slip& slip, Span before) {
    const Span found = token_at(scene, slip.at);
    std::string message = std::string("expected ") + slip.expected;
    if (before.known() && !before.empty()) {
        message += message.find("such as") == std::string::npos ? " after " : ", after ";
        message += in_ticks(scene.slice(before));
    }
    message += ", found " + found_words(scene, found);
    Span place = found;
    if (found.empty() && before.known()) {
        place =
            scene.span(before.end, before.end); // just after the last word, not after the spaces
    }
    Diagnostic finding = syntax_finding(std::move(message), place);
    if (mend_unclosed_text(finding, scene, slip.at) || mend_typography(finding, scene, found) ||
        mend_decimal_comma(finding, scene, found, before) ||
        mend_range(finding, scene, found, before) ||
        mend_sign_in_name(finding, scene, found, before)) {
        return finding;
    }
    mend_misspelt(finding, scene, slip.expected, found);
    return finding;
}

Diagnostic unknown_word(const Scene& scene, Body body, Span word) {
    const bool top = body == Body::first_column;
    Diagnostic finding = syntax_finding(
        "expected " +
            (top ? std::string("a declaration") : "a detail of " + std::string(body_name(body))) +
            ", found " + found_words(scene, word),
        word);
    std::vector<std::string> candidates;
    for (const Row& candidate : rows(body)) {
        candidates.emplace_back(candidate.spelling);
    }
    const std::string meant = nearest(scene.slice(word), candidates);
    if (!meant.empty()) {
        offer(finding, word, meant, true);
    } else if (top && digit_at(scene.text, word.begin)) {
        finding.help = "a count stands behind the title: `fastener NAME \"title\" 4 x KIND`";
    } else if (!mend_typography(finding, scene, word)) {
        finding.help =
            top ? "a line in the first column starts with a word such as `part` or `step`"
                : std::string(body_name(body)) + " takes " + what_may_stand(body);
    }
    return finding;
}

Diagnostic misplaced_detail(const std::string& name, Body body, Span word) {
    Diagnostic finding =
        syntax_finding("`" + name + "` is not a detail of " + std::string(body_name(body)), word);
    finding.why = "`" + name + "` is a detail of " + homes(name);
    finding.help = std::string(body_name(body)) + " takes " + what_may_stand(body);
    for (const Row& row : rows(body)) {
        const std::string_view example = example_line(body, row.keyword);
        if (example.find(" " + name + " ") != std::string_view::npos)
            finding.help = "here it goes on in the line of another: `" + std::string(example) + "`";
    }
    return finding;
}

Diagnostic unknown_prose(const Scene& scene, Span word) {
    const std::string name(scene.slice(word));
    Diagnostic finding = syntax_finding("expected prose, found " + in_ticks(name + ":"), word);
    const std::string meant =
        nearest(name, {"text", "note", "why", "danger", "warning", "caution", "notice"});
    if (meant.empty()) {
        finding.help = "prose starts with `text:`, `note:`, `why:`, `danger:`, `warning:`, "
                       "`caution:` or `notice:`";
    } else {
        offer(finding, word, meant, true);
    }
    return finding;
}

std::string printable(std::string words) {
    std::size_t at = first_unreadable_byte(words);
    while (at != std::string::npos) {
        words[at] = '?';
        const std::size_t next = first_unreadable_byte(std::string_view(words).substr(at));
        at = next == std::string_view::npos ? next : at + next;
    }
    return words;
}

std::string with_commas(std::size_t number) {
    std::string digits = std::to_string(number);
    for (std::size_t at = digits.size(); at > 3;) {
        at -= 3;
        digits.insert(at, ",");
    }
    return digits;
}

} // namespace matchmark::syntax
