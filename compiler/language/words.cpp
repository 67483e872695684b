// Sentences in runs, and patterns with places that each language orders as it needs.
#include "language/words.hpp"

#include <algorithm>

namespace matchmark::language {

namespace {

// The next place of a pattern: [begin, end) with its braces; npos when there is none.
std::pair<std::size_t, std::size_t> next_place(std::string_view pattern, std::size_t from) {
    const std::size_t open = pattern.find('{', from);
    const std::size_t close =
        open == std::string_view::npos ? std::string_view::npos : pattern.find('}', open);
    if (close == std::string_view::npos) {
        return {std::string_view::npos, std::string_view::npos};
    }
    return {open, close + 1};
}

} // namespace

Words words_of(std::string text, RunKind kind) {
    return text.empty() ? Words{} : Words{{kind, std::move(text)}};
}

void append(Words& to, const Words& more) {
    for (const Run& run : more) {
        if (run.text.empty()) {
            continue;
        }
        if (run.kind == RunKind::words && !to.empty() && to.back().kind == RunKind::words) {
            to.back().text += run.text;
        } else {
            to.push_back(run);
        }
    }
}

std::string plain(const Words& words) {
    std::string text;
    for (const Run& run : words) {
        if (run.kind != RunKind::item_number) {
            text += run.text;
        }
    }
    return text;
}

Words fill(std::string_view pattern, const std::vector<Place>& places) {
    Words filled;
    for (std::size_t at = 0; at < pattern.size();) {
        const auto [begin, end] = next_place(pattern, at);
        if (begin == std::string_view::npos) {
            append(filled, words_of(std::string(pattern.substr(at))));
            break;
        }
        append(filled, words_of(std::string(pattern.substr(at, begin - at))));
        const std::string_view name = pattern.substr(begin + 1, end - begin - 2);
        const auto found = std::find_if(places.begin(), places.end(),
                                        [&](const Place& place) { return place.first == name; });
        append(filled, found == places.end()
                           ? words_of(std::string(pattern.substr(begin, end - begin)))
                           : found->second);
        at = end;
    }
    return filled;
}

std::string fill_text(std::string_view pattern,
                      const std::vector<std::pair<std::string_view, std::string>>& places) {
    std::vector<Place> as_words;
    for (const auto& [name, text] : places) {
        as_words.emplace_back(name, words_of(text));
    }
    std::string text;
    for (const Run& run : fill(pattern, as_words)) {
        text += run.text;
    }
    return text;
}

std::vector<std::string> places_of(std::string_view pattern) {
    std::vector<std::string> names;
    for (std::size_t at = 0;;) {
        const auto [begin, end] = next_place(pattern, at);
        if (begin == std::string_view::npos) {
            break;
        }
        std::string_view name = pattern.substr(begin + 1, end - begin - 2);
        name.remove_prefix(name.starts_with("the ") ? 4 : 0);
        names.emplace_back(name);
        at = end;
    }
    std::sort(names.begin(), names.end());
    return names;
}

} // namespace matchmark::language
