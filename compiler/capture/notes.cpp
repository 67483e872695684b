// Cuts notes into lines, phrases and words, and forgives what a hand in a glove does to them.
#include "capture/notes.hpp"

#include "capture/kind_words.hpp"
#include "model/quantity.hpp"
#include "source/text.hpp"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace matchmark::capture {

namespace {

bool is_space(char c) { return c == ' ' || c == '\t' || c == '\r'; }

constexpr auto number_words = std::to_array<std::pair<std::string_view, std::string_view>>({
    {"one", "1"},
    {"two", "2"},
    {"both", "2"},
    {"pair", "2"},
    {"three", "3"},
    {"four", "4"},
    {"five", "5"},
    {"six", "6"},
    {"seven", "7"},
    {"eight", "8"},
    {"nine", "9"},
    {"ten", "10"},
    {"eleven", "11"},
    {"twelve", "12"},
});

// Words that say nothing about what is on the bench.
constexpr auto idle_words = std::to_array<std::string_view>(
    {"then", "now", "next", "the", "a", "an", "all", "i", "please", "carefully"});

std::string lowered(std::string_view text) {
    std::string low(text);
    std::transform(low.begin(), low.end(), low.begin(), small);
    return low;
}

// Where the words start, past "- ", "3.", "(4)", "* ".
std::size_t past_bullet(std::string_view line) {
    std::size_t at = 0;
    const auto skip_spaces = [&] {
        while (at < line.size() && is_space(line[at]))
            ++at;
    };
    skip_spaces();
    if (at < line.size() && (line[at] == '-' || line[at] == '*' || line[at] == '+'))
        ++at;
    skip_spaces();
    std::size_t number = at;
    if (number < line.size() && line[number] == '(')
        ++number;
    const std::size_t digits = number;
    while (number < line.size() && is_digit(line[number]))
        ++number;
    if (number > digits && number < line.size() &&
        (line[number] == '.' || line[number] == ')' || line[number] == ':') &&
        (number + 1 == line.size() || is_space(line[number + 1])))
        at = number + 1;
    skip_spaces();
    return at;
}

bool ends_word(std::string_view text, std::size_t at) {
    const char c = text[at];
    if (is_space(c) || c == ';' || c == '"')
        return true;
    // A comma between digits is a decimal comma; other stops end a word before a space.
    const bool in_number =
        at > 0 && is_digit(text[at - 1]) && at + 1 < text.size() && is_digit(text[at + 1]);
    if (c == ',')
        return !in_number;
    return (c == '.' || c == '!') && (at + 1 == text.size() || is_space(text[at + 1]));
}

std::string meaning(std::string word) {
    for (const auto& [spoken, digits] : number_words) {
        if (word == spoken)
            return std::string(digits);
    }
    for (std::size_t i = 1; i + 1 < word.size(); ++i) {
        if (word[i] == ',' && is_digit(word[i - 1]) && is_digit(word[i + 1]))
            word[i] = '.';
    }
    return word;
}

std::vector<Phrase> phrases_of(std::string_view text, FileId file, std::size_t begin) {
    std::vector<Phrase> phrases(1);
    for (std::size_t at = 0; at < text.size();) {
        if (ends_word(text, at)) {
            if ((text[at] == ',' || text[at] == ';') && !phrases.back().empty())
                phrases.emplace_back();
            ++at;
            continue;
        }
        const std::size_t from = at;
        while (at < text.size() && !ends_word(text, at))
            ++at;
        std::string word = lowered(text.substr(from, at - from));
        const bool joins_lines = word == "and" && phrases.size() == 1 && phrases.back().empty();
        if (joins_lines ||
            std::find(idle_words.begin(), idle_words.end(), word) != idle_words.end())
            continue;
        phrases.back().push_back({meaning(std::move(word)),
                                  {file, static_cast<std::uint32_t>(begin + from),
                                   static_cast<std::uint32_t>(begin + at)}});
    }
    if (phrases.back().empty())
        phrases.pop_back();
    return phrases;
}

// Where the next act of a line begins: behind a "then" that stands between two. The whole length
// when there is none.
std::size_t next_act(std::string_view line) {
    const std::string low = lowered(line);
    const std::size_t at = low.find(" then ");
    const bool between = at != std::string::npos && low.find_first_not_of(" ,;") < at;
    return between ? at + 1 : line.size();
}

std::string trimmed(std::string_view text) {
    while (!text.empty() && is_space(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && is_space(text.back()))
        text.remove_suffix(1);
    return std::string(text);
}

// `job: replace cell`. What is no head is an action.
bool read_head(Notes& notes, std::string_view line, std::size_t begin) {
    const std::size_t colon = line.find(':');
    if (colon == std::string_view::npos)
        return false;
    const std::string key = lowered(trimmed(line.substr(0, colon)));
    const std::string_view rest = line.substr(colon + 1);
    if (key == "device")
        notes.device = trimmed(rest);
    else if (key == "base")
        notes.base = trimmed(rest);
    else if (key == "reader" || key == "for")
        notes.reader = lowered(trimmed(rest));
    else if (key == "job" || key == "goal") {
        const auto phrases = phrases_of(rest, notes.file, begin + colon + 1);
        notes.job.clear();
        for (const Phrase& phrase : phrases)
            notes.job.insert(notes.job.end(), phrase.begin(), phrase.end());
    } else
        return false;
    return true;
}

} // namespace

Notes read_notes(const SourceMap& sources, FileId file) {
    Notes notes;
    notes.file = file;
    bool putting_back = false;
    const SourceFile& source = sources.file(file);
    for (std::size_t n = 0; n < source.line_starts.size(); ++n) {
        const std::string_view whole = sources.line(file, static_cast<std::uint32_t>(n + 1));
        std::size_t begin = source.line_starts[n];
        std::size_t at = past_bullet(whole);
        if (n == 0 && whole.substr(at).starts_with("\xEF\xBB\xBF"))
            at += 3;
        const std::string_view line = whole.substr(at);
        begin += at;
        if (line.starts_with('#')) {
            notes.remarks.push_back({trimmed(line.substr(1)), notes.lines.size()});
            continue;
        }
        const std::string said = lowered(trimmed(line));
        if (said == "back:" || said == "back" || said == "putting back:") {
            putting_back = true;
            continue;
        }
        if (read_head(notes, line, begin))
            continue;
        for (std::size_t act = 0; act < line.size();) {
            const std::string_view rest = line.substr(act);
            const std::size_t length = next_act(rest);
            NotedLine noted{
                phrases_of(rest.substr(0, length), file, begin + act), putting_back, {}};
            act += length;
            if (noted.phrases.empty())
                continue;
            noted.span = noted.phrases.front().front().span;
            noted.span.end = noted.phrases.back().back().span.end;
            notes.lines.push_back(std::move(noted));
        }
    }
    return notes;
}

std::string unit_named(const std::string& word) {
    static constexpr auto spoken = std::to_array<std::pair<std::string_view, std::string_view>>({
        {"nm", "N.m"},
        {"newtonmetres", "N.m"},
        {"litre", "l"},
        {"litres", "l"},
        {"liter", "l"},
        {"liters", "l"},
        {"volts", "V"},
    });
    for (const auto& [heard, unit] : spoken) {
        if (word == heard)
            return std::string(unit);
    }
    for (const std::string& unit : model::unit_spellings()) {
        if (lowered(unit) == word)
            return unit;
    }
    return {};
}

} // namespace matchmark::capture
