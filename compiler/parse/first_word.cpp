// Reads the word or words that open a line.
#include "parse/first_word.hpp"

#include "source/text.hpp"

#include <algorithm>
#include <array>

namespace matchmark::syntax {

namespace {

bool in_word(char byte) {
    return (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z') || is_digit(byte) ||
           byte == '-' || static_cast<unsigned char>(byte) >= 0x80U;
}

std::uint32_t past_spaces(const Scene& scene, std::uint32_t at) {
    while (at < scene.end && (scene.text[at] == ' ' || scene.text[at] == '\t')) {
        ++at;
    }
    return at;
}

std::uint32_t past_word(const Scene& scene, std::uint32_t at) {
    while (at < scene.end && in_word(scene.text[at])) {
        ++at;
    }
    return at;
}

// How far the words of a keyword stand at `at`, one after the other.
struct Progress {
    std::uint32_t read_to = 0; // end of the last word that matched
    std::string_view missing;  // the first that did not; empty when all did
    bool any = false;
};

Progress progress(const Scene& scene, std::string_view spelling, std::uint32_t at) {
    Progress made{at, {}, false};
    while (!spelling.empty()) {
        const std::size_t length = std::min(spelling.find(' '), spelling.size());
        const std::string_view wanted = spelling.substr(0, length);
        const std::uint32_t begin = made.any ? past_spaces(scene, made.read_to) : at;
        const std::uint32_t end = past_word(scene, begin);
        if (scene.slice(begin, end) != wanted) {
            made.missing = wanted;
            return made;
        }
        made.read_to = end;
        made.any = true;
        spelling.remove_prefix(std::min(length + 1, spelling.size()));
    }
    return made;
}

} // namespace

FirstWord first_word(const Scene& scene, std::uint32_t at) {
    const std::uint32_t end = past_word(scene, at);
    if (end == at) {
        return {token_at(scene, at), 0};
    }
    const std::uint32_t next = past_spaces(scene, end);
    const bool colon = next < scene.end && scene.text[next] == ':';
    return {scene.span(at, end), colon ? next : 0};
}

Found find_row(const Scene& scene, const std::vector<Row>& among, std::uint32_t at) {
    for (const Row& candidate : among) {
        if (candidate.spelling[0] != scene.text[at]) {
            continue;
        }
        const Progress made = progress(scene, candidate.spelling, at);
        if (made.any && made.missing.empty()) {
            return {&candidate, made.read_to - at};
        }
    }
    return {};
}

Found find_anywhere(const Scene& scene, std::uint32_t at) {
    for (auto body = static_cast<int>(Body::device); body < static_cast<int>(Body::unknown);
         ++body) {
        const Found found = find_row(scene, rows(static_cast<Body>(body)), at);
        if (found.row != nullptr) {
            return found;
        }
    }
    return {};
}

Half half_matched(const Scene& scene, const std::vector<Row>& among, Span word) {
    for (const Row& candidate : among) {
        const Progress made = progress(scene, candidate.spelling, word.begin);
        if (made.any && !made.missing.empty()) {
            return {&candidate, scene.span(word.begin, made.read_to), made.missing,
                    past_spaces(scene, made.read_to)};
        }
    }
    return {};
}

bool is_verb(const Scene& scene, Span word) {
    const std::string_view name = scene.slice(word);
    return !name.empty() && in_word(name[0]) && name[0] != '-' && !is_digit(name[0]) &&
           !is_joining_word(name);
}

bool is_joining_word(std::string_view word) {
    static constexpr auto joining = std::to_array<std::string_view>(
        {"with",    "to",    "for",   "in", "as",     "by", "or",    "on",   "when", "else",
         "through", "below", "above", "at", "across", "is", "until", "only", "kind", "x"});
    return std::find(joining.begin(), joining.end(), word) != joining.end();
}

bool starts_declaration(std::string_view word) {
    static constexpr auto starting = std::to_array<std::string_view>(
        {"device", "part", "fastener", "connector", "bond", "fluid", "energy", "function", "kind",
         "guide", "take-apart", "put-back", "step", "test"});
    return std::find(starting.begin(), starting.end(), word) != starting.end();
}

Span number_at(const Scene& scene, std::uint32_t at) {
    std::uint32_t end = at;
    while (end < scene.end && is_digit(scene.text[end])) {
        ++end;
    }
    if (end + 1 < scene.end && scene.text[end] == '.' && is_digit(scene.text[end + 1])) {
        ++end;
        while (end < scene.end && is_digit(scene.text[end])) {
            ++end;
        }
    }
    return scene.span(at, end);
}

bool times_follows(const Scene& scene, std::uint32_t at) {
    const std::uint32_t sign = past_spaces(scene, at);
    if (sign >= scene.end || scene.text[sign] != 'x') {
        return false;
    }
    return sign + 1 >= scene.end || !in_word(scene.text[sign + 1]) ||
           is_digit(scene.text[sign + 1]);
}

} // namespace matchmark::syntax
