// Splits prose into sentences, as a reader would.
#include "check/sentences.hpp"

#include <algorithm>
#include <cctype>

namespace matchmark::check {

namespace {

bool is_space(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

bool may_end(char c) { return c == '.' || c == '!' || c == '?' || c == '\n'; }

// A full stop ends a sentence when a space or the end follows, and the next word does not start in
// lower case ("approx. 3").
bool ends_sentence(std::string_view text, std::size_t at) {
    const char c = text[at];
    if (c != '.' && c != '!' && c != '?')
        return false;
    std::size_t next = at + 1;
    while (next < text.size() && (text[next] == ')' || text[next] == '"' || text[next] == '*'))
        ++next;
    if (next < text.size() && !is_space(text[next]))
        return false;
    while (next < text.size() && is_space(text[next]))
        ++next;
    return next >= text.size() || std::islower(static_cast<unsigned char>(text[next])) == 0;
}

// A blank line, or the start of a list entry, heading or table row, ends a sentence too.
bool starts_block(std::string_view text, std::size_t line_end) {
    std::size_t next = line_end + 1;
    while (next < text.size() && (text[next] == ' ' || text[next] == '\t'))
        ++next;
    if (next >= text.size())
        return true;
    const char c = text[next];
    const bool bullet =
        (c == '-' || c == '*' || c == '+') && next + 1 < text.size() && text[next + 1] == ' ';
    std::size_t digits = next;
    while (digits < text.size() && std::isdigit(static_cast<unsigned char>(text[digits])) != 0)
        ++digits;
    const bool number = digits > next && digits + 1 < text.size() &&
                        (text[digits] == '.' || text[digits] == ')') && text[digits + 1] == ' ';
    return c == '\n' || c == '#' || c == '|' || c == '>' || bullet || number;
}

bool is_word(std::string_view word) {
    return std::any_of(word.begin(), word.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
               (c & 0x80) != 0;
    });
}

bool is_markdown_sign(char c) { return c == '*' || c == '`' || c == '#' || c == '_'; }

std::string without_markdown_signs(std::string_view written) {
    std::string word(written);
    const auto first = std::find_if(word.begin(), word.end(), is_markdown_sign);
    word.erase(std::remove_if(first, word.end(), is_markdown_sign), word.end());
    return word;
}

// Its words, Markdown signs left out.
std::vector<std::string> words_of(std::string_view piece) {
    std::vector<std::string> words;
    for (std::size_t at = 0; at < piece.size();) {
        if (is_space(piece[at])) {
            ++at;
            continue;
        }
        std::size_t end = at;
        while (end < piece.size() && !is_space(piece[end]))
            ++end;
        const std::string_view written = piece.substr(at, end - at);
        if (is_word(written))
            words.push_back(without_markdown_signs(written));
        at = end;
    }
    return words;
}

} // namespace

std::vector<Sentence> sentences(const SourceMap& sources, const model::Prose& prose) {
    std::vector<Sentence> all;
    if (!prose.span.known())
        return all;
    std::string_view text = sources.slice(prose.span);
    std::size_t start = 0;
    const std::size_t colon = text.find(':');
    if (colon < 8 && text.find(' ') > colon)
        start = colon + 1;
    std::size_t from = start;
    for (std::size_t at = start; at <= text.size(); ++at) {
        while (at < text.size() && !may_end(text[at]))
            ++at;
        const bool end = at == text.size();
        if (!end && !(text[at] == '\n' && starts_block(text, at)) && !ends_sentence(text, at))
            continue;
        const std::size_t to = std::min(text.size(), at + 1);
        Sentence sentence;
        sentence.words = words_of(text.substr(from, to - from));
        while (from < to && is_space(text[from]))
            ++from;
        sentence.span = {prose.span.file, static_cast<std::uint32_t>(prose.span.begin + from),
                         static_cast<std::uint32_t>(prose.span.begin + (end ? to : at + 1))};
        if (!sentence.words.empty())
            all.push_back(std::move(sentence));
        from = to;
    }
    return all;
}

std::vector<const model::Prose*> procedural_prose(const Walk& walk) {
    std::vector<const model::Prose*> all;
    for (const model::Step& step : walk.procedure.steps) {
        for (const model::Prose& prose : step.prose) {
            if (prose.kind == model::ProseKind::text)
                all.push_back(&prose);
        }
    }
    return all;
}

} // namespace matchmark::check
