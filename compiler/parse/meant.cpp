// What whoever writes the language for the first time meant by a line that makes no sense.
#include "parse/meant.hpp"

#include "model/spelling.hpp"
#include "parse/examples.hpp"
#include "parse/first_word.hpp"
#include "parse/line_words.hpp"
#include "parse/meant_action.hpp"
#include "parse/meant_members.hpp"

#include <algorithm>
#include <cctype>
#include <utility>
#include <vector>

namespace matchmark::syntax {

namespace {

bool is_letter(char byte) {
    return std::isalpha(static_cast<unsigned char>(byte)) != 0 ||
           (static_cast<unsigned char>(byte) & 0x80U) != 0;
}

// Where a text without quotes ends: before a comma, a comment, or the words that go on from it.
std::uint32_t end_of_bare_text(const Scene& scene, std::uint32_t at) {
    std::size_t length = scene.end - at;
    const std::string_view rest = scene.slice(at, scene.end);
    for (const char* stop : {",", " #", " for ", " kind ", " in "}) {
        length = std::min({length, rest.find(stop), rest.size()});
    }
    while (length > 0 && is_gap(rest[length - 1])) {
        --length;
    }
    return at + static_cast<std::uint32_t>(length);
}

void put_in_quotes(Diagnostic& finding, const Scene& scene, Span where) {
    const std::string quoted = "\"" + std::string(scene.slice(where)) + "\"";
    change(finding, where, quoted, "write `" + quoted + "`");
}

bool meant_quotes(Diagnostic& finding, const Scene& scene, const Misread& misread, Span found) {
    const std::string_view expected = misread.slip.expected;
    if (!expected.ends_with("in double quotes") || found.empty() ||
        scene.text[found.begin] == '"') {
        return false;
    }
    if (expected != expected_words<g::path>) {
        const std::uint32_t end = end_of_bare_text(scene, found.begin);
        const bool bare =
            end > found.begin && scene.slice(found.begin, end).find('"') == std::string_view::npos;
        if (bare) {
            put_in_quotes(finding, scene, scene.span(found.begin, end));
        }
        return bare;
    }
    put_in_quotes(finding, scene, words_from(scene, found.begin).front());
    return true;
}

// A name that a declaration has none of: made from its title, or put before its number.
bool meant_name(Diagnostic& finding, const Scene& scene, const Misread& misread, Span found) {
    if (misread.slip.expected != std::string_view(expected_words<g::new_name>) || found.empty()) {
        return false;
    }
    const std::string_view token = scene.slice(found);
    const std::string keyword(spelling(misread.keyword));
    if (token[0] == '"') {
        const std::string name = model::name_from(token, keyword);
        if (!name.empty()) {
            change(finding, scene.span(found.begin, found.begin), name + " ",
                   "a name of one word stands before the title: `" + keyword + " " + name + "`");
        }
        return !name.empty();
    }
    if (is_digit(token[0])) {
        const std::string name = keyword + "-" + std::string(token);
        change(finding, found, name, "a name starts with a letter: `" + name + "`");
        return true;
    }
    if (token[0] >= 'a' && token[0] <= 'z') {
        const std::string name = keyword + "-" + std::string(token);
        change(finding, found, name,
               "`" + std::string(token) +
                   "` ties the parts of a line together, and names nothing: `" + name + "`");
        return true;
    }
    return false;
}

bool takes_count(Keyword keyword) {
    return keyword == Keyword::fastener || keyword == Keyword::connector ||
           keyword == Keyword::bond || keyword == Keyword::part;
}

// How many there are, and of which kind: `screw M3`, `4 screws M3`, `four screws`.
bool meant_count(Diagnostic& finding, const Scene& scene, const Misread& misread, Span found) {
    const std::string_view token = scene.slice(found);
    const bool after_title = scene.text[misread.before.end - 1] == '"';
    if (!after_title || !takes_count(misread.keyword)) {
        return false;
    }
    if (is_digit(token[0])) {
        finding.help = "write the count, `x` and the kind: `" +
                       std::string(example_line(Body::part, Keyword::count)) + "`";
        return true;
    }
    if (const std::size_t figure = figure_of(token)) {
        const std::string count = std::to_string(figure) + " x";
        change(finding, found, count, "write the count in figures: `" + count + "`");
        return true;
    }
    if (is_one_of(token, {"type", "is", "inside", "of"})) {
        const std::string word = is_one_of(token, {"type", "is"}) ? "kind" : "in";
        change(finding, found, word, "write `" + word + "`");
        return true;
    }
    if (is_one_of(token, {"covers", "holds", "joins", "carries", "feeds", "behind", "under",
                          "blocks", "torque"})) {
        change(finding, scene.span(misread.before.end, found.begin), "\n  ",
               "`" + std::string(token) + "` stands on an indented line of its own below");
        return true;
    }
    if (is_letter(token[0]) && !is_joining_word(token)) {
        const std::string word(token);
        change(finding, scene.span(found.begin, found.begin), "kind ",
               "say how many there are: `4 x " + word + "`; of one alone: `kind " + word + "`");
        return true;
    }
    return false;
}

// `part top lid "lid"`: a name of two words; `part lid lid`: a title without quotes.
bool meant_head(Diagnostic& finding, const Scene& scene, const Misread& misread, Span found) {
    const bool head = misread.slip.expected == std::string_view(expected_words<g::end_of_head>);
    if (!head || found.empty() || !misread.before.known() || misread.before.empty()) {
        return false;
    }
    if (meant_count(finding, scene, misread, found)) {
        return true;
    }
    if (!is_letter(scene.text[found.begin]) || scene.text[misread.before.end - 1] == '"') {
        return false;
    }
    const std::size_t quote = scene.slice(found.begin, scene.end).find('"');
    if (quote == std::string_view::npos) {
        put_in_quotes(finding, scene,
                      scene.span(found.begin, end_of_bare_text(scene, found.begin)));
        return true;
    }
    const auto title = found.begin + static_cast<std::uint32_t>(quote);
    std::string name(scene.slice(misread.before));
    for (const Span& word : words_from({scene.text, scene.file, title}, found.begin)) {
        name += "-" + std::string(scene.slice(word));
    }
    change(finding, scene.span(misread.before.begin, title), name + " ",
           "a name is one word: `" + name + "`");
    return true;
}

// `step open Open the lid`: its title, without quotes, up to a comment.
bool meant_step_title(Diagnostic& finding, const Scene& scene, const Misread& misread, Span found) {
    const bool titled = misread.keyword == Keyword::step || misread.keyword == Keyword::test;
    const std::string_view rest = scene.slice(found.begin, scene.end);
    const bool after_name =
        misread.before.known() && scene.text[misread.before.begin] != '"' &&
        std::string_view(misread.slip.expected).ends_with("the end of the line");
    if (!titled || !after_name || !is_letter(rest[0]) || rest.find('"') != std::string_view::npos) {
        return false;
    }
    auto length = static_cast<std::uint32_t>(std::min(rest.find(" #"), rest.size()));
    while (length > 0 && is_gap(rest[length - 1])) {
        --length;
    }
    put_in_quotes(finding, scene, scene.span(found.begin, found.begin + length));
    return true;
}

// `joins hose and pump`, `holds lid on base`: what is tied and what it is tied to.
bool meant_to(Diagnostic& finding, const Scene& scene, const Misread& misread, Span found) {
    const bool ties = misread.keyword == Keyword::holds || misread.keyword == Keyword::joins;
    if (!ties || misread.slip.expected != std::string_view("`to`") ||
        !is_one_of(scene.slice(found), {"and", "on", "onto", "in", "into", "with", "at", "from"})) {
        return false;
    }
    change(finding, found, "to", "write `to`");
    return true;
}

// Signs of other languages: `=`, `//`, `;`, `and` in a list.
bool meant_sign(Diagnostic& finding, const Scene& scene, const Misread& misread, Span found) {
    const std::string_view rest = scene.slice(found.begin, scene.end);
    if (rest.starts_with("=") &&
        misread.slip.expected == std::string_view(expected_words<g::arrow>)) {
        const std::uint32_t end = rest.starts_with("=>") ? found.begin + 2 : found.begin + 1;
        change(finding, scene.span(found.begin, end), "->", "write `->`");
        return true;
    }
    if (rest.starts_with("=")) {
        change(finding, scene.span(found.begin, after_spaces(scene, found.end)), "",
               "leave the `=` out");
        return true;
    }
    if (rest.starts_with("//")) {
        change(finding, scene.span(found.begin, found.begin + 2), "#", "a comment starts with `#`");
        return true;
    }
    if (rest == ";" || rest == ".") {
        change(finding, found, "", "leave the `" + std::string(rest) + "` out");
        return true;
    }
    const bool goes_on = std::string_view(misread.slip.expected).ends_with("the end of the line") &&
                         !is_sentence(scene, misread.line);
    if (goes_on && scene.slice(found) == "and" && misread.before.known()) {
        change(finding, scene.span(misread.before.end, found.end), ",",
               "write a comma between them");
        return true;
    }
    return false;
}

bool meant_reader(Diagnostic& finding, const Scene& scene, const Misread& misread, Span found) {
    if (misread.slip.expected != std::string_view(expected_words<g::reader_level>)) {
        return false;
    }
    finding.help = "`novice` is for anyone, `competent` for who has done such work before, "
                   "`trained` for who was taught it, `licensed \"gas fitter\"` for a trade";
    const std::string_view word = scene.slice(found);
    const bool anyone = is_one_of(word, {"anyone", "anybody", "everyone", "everybody", "all",
                                         "beginner", "beginners", "novices"});
    if (anyone || is_one_of(word, {"professional", "professionals", "expert", "experts"})) {
        finding.edits.push_back({found, anyone ? "novice" : "trained"});
        finding.safe = false;
    }
    return true;
}

// "26.11.2026" -> "2026-11-26"; with strokes, nobody could say which is the month.
bool meant_date(Diagnostic& finding, const Scene& scene, const Misread& misread, Span found) {
    if (misread.slip.expected != std::string_view(expected_words<g::date>)) {
        return false;
    }
    finding.help = "write year, month and day: `2026-03-31`";
    std::vector<std::string> numbers(1);
    for (const char byte : scene.slice(found)) {
        if (byte == '.') {
            numbers.emplace_back();
        } else if (is_digit(byte)) {
            numbers.back() += byte;
        } else {
            return true;
        }
    }
    if (numbers.size() != 3 || numbers[2].size() != 4 || numbers[0].empty() || numbers[1].empty()) {
        return true;
    }
    const auto two = [](const std::string& number) {
        return number.size() == 1 ? "0" + number : number;
    };
    const std::string date = numbers[2] + "-" + two(numbers[1]) + "-" + two(numbers[0]);
    change(finding, found, date, "write year, month and day: `" + date + "`");
    return true;
}

} // namespace

void offer_meant(Diagnostic& finding, const Scene& scene, const Misread& misread) {
    const Span found = token_at(scene, misread.slip.at);
    if (misread.keyword == Keyword::verb && scene.slice(found) == "then") {
        finding.help.clear(); // `when` is only spelled like it
        finding.edits.clear();
    }
    if (meant_how_many(finding, scene, misread) || !finding.help.empty() ||
        !finding.edits.empty()) {
        return;
    }
    if (meant_reader(finding, scene, misread, found) ||
        meant_date(finding, scene, misread, found) || meant_members(finding, scene, misread)) {
        return;
    }
    if (!found.empty() && (meant_to(finding, scene, misread, found) ||
                           meant_step_title(finding, scene, misread, found) ||
                           meant_sign(finding, scene, misread, found) ||
                           meant_action(finding, scene, misread, found) ||
                           meant_quotes(finding, scene, misread, found) ||
                           meant_name(finding, scene, misread, found) ||
                           meant_head(finding, scene, misread, found))) {
        return;
    }
    const std::string_view line = example_line(misread.body, misread.keyword);
    if (!line.empty()) {
        finding.help = "a line of this sort: `" + std::string(line) + "`";
    }
}

bool is_sentence(const Scene& scene, Span line) {
    const std::string_view text = scene.slice(line);
    const std::vector<Span> words = words_from({scene.text, scene.file, line.end}, line.begin);
    const bool capital = std::isupper(static_cast<unsigned char>(text[0])) != 0;
    const bool stopped = text.ends_with('.') || text.ends_with('!');
    const bool signs = text.find_first_of("\"=<>#") != std::string_view::npos;
    const bool listed = text.find(',') != std::string_view::npos;
    return words.size() >= 3 && !signs && (capital || stopped || (words.size() > 4 && !listed));
}

void offer_prose(Diagnostic& finding, Span line) {
    change(finding, {line.file, line.begin, line.begin}, "text: ",
           "write `text:` before it; a safety message stands behind `caution:`, `warning:` or "
           "`danger:`");
}

MeantDeclaration meant_declaration(const Scene& scene, Span word) {
    static constexpr auto trade_words =
        std::to_array<std::pair<std::string_view, std::string_view>>({
            {"disassemble", "take-apart"},
            {"disassembly", "take-apart"},
            {"dismantle", "take-apart"},
            {"dismantling", "take-apart"},
            {"removal", "take-apart"},
            {"teardown", "take-apart"},
            {"assembly", "put-back"},
            {"reassemble", "put-back"},
            {"reassembly", "put-back"},
            {"refit", "put-back"},
            {"installation", "put-back"},
            {"component", "part"},
            {"fixing", "fastener"},
            {"connection", "connector"},
            {"liquid", "fluid"},
        });
    std::string small(scene.slice(word));
    std::transform(small.begin(), small.end(), small.begin(), [](char byte) {
        return static_cast<char>(std::tolower(static_cast<unsigned char>(byte)));
    });
    for (const auto& [said, meant] : trade_words) {
        if (said == small) {
            return {meant, word};
        }
    }
    const Span next = token_at(scene, after_spaces(scene, word.end));
    const std::string joined = small + "-" + std::string(scene.slice(next));
    for (const Row& candidate : rows(Body::first_column)) {
        if (!next.empty() && candidate.spelling == joined) {
            return {candidate.spelling, scene.span(word.begin, next.end)};
        }
    }
    return {};
}

} // namespace matchmark::syntax
