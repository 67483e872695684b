// Puts parts, counts and states into words, here alone: so backticks, units and plurals cannot
// vary.
#include "model/describe.hpp"

#include "model/spelling.hpp"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace matchmark::model {
namespace {

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

bool ends_with_any(std::string_view word, std::initializer_list<std::string_view> endings) {
    return std::any_of(endings.begin(), endings.end(),
                       [&](std::string_view ending) { return word.ends_with(ending); });
}

// Words of a workshop that do not just take an s.
constexpr std::array<std::pair<std::string_view, std::string_view>, 9> irregular{{
    {"foot", "feet"},
    {"tooth", "teeth"},
    {"half", "halves"},
    {"shelf", "shelves"},
    {"knife", "knives"},
    {"axis", "axes"},
    {"chassis", "chassis"},
    {"series", "series"},
    {"pliers", "pliers"},
}};

std::string plural_word(std::string_view word) {
    for (const auto& [one, many] : irregular) {
        if (word == one) {
            return std::string(many);
        }
    }
    // Other scripts form plurals in other ways, or not at all: such a word stays as it is.
    if (word.empty() || !is_letter(word.back())) {
        return std::string(word);
    }
    if (ends_with_any(word, {"s", "x", "z", "ch", "sh"})) {
        return std::string(word) + "es";
    }
    const bool vowel_before =
        word.size() < 2 ||
        std::string_view("aeiou").find(lower(word[word.size() - 2])) != std::string_view::npos;
    if (word.back() == 'y' && !vowel_before) {
        return std::string(word.substr(0, word.size() - 1)) + "ies";
    }
    return std::string(word) + "s";
}

bool is_word_to_count(std::string_view word) {
    return !word.empty() &&
           std::none_of(word.begin(), word.end(), [](char c) { return c >= '0' && c <= '9'; });
}

// The title, or the name in words. A name in the plural ("lid-screws") is already as many as it
// says.
std::string title_or_name(const Item& item) {
    if (!item.title.empty()) {
        return item.count > 1 ? plural(item.title) : item.title;
    }
    const std::string words = spaced(item.name);
    return item.count > 1 && !words.ends_with('s') ? plural(words) : words;
}

bool has_article(std::string_view title) {
    constexpr std::string_view article = "the ";
    return title.size() > article.size() &&
           std::equal(article.begin(), article.end(), title.begin(),
                      [](char a, char b) { return a == lower(b); });
}

bool parts_words(char c) {
    switch (c) {
    case ' ':
    case '\t':
    case '\r':
    case '\n':
    case '-':
    case ',':
    case ';':
    case ':':
    case '(':
    case ')':
    case '"':
    case '\'':
        return true;
    default:
        return false;
    }
}

// The next word from `at` on, without the signs that end a sentence; moves `at` past it. Empty at
// the end.
std::string_view next_word(std::string_view text, std::size_t& at) {
    std::string_view word;
    while (word.empty() && at < text.size()) {
        std::size_t end = at;
        while (end < text.size() && !parts_words(text[end]))
            ++end;
        word = text.substr(at, end - at);
        while (word.ends_with('.') || word.ends_with('!') || word.ends_with('?'))
            word.remove_suffix(1);
        at = end + 1;
    }
    return word;
}

bool has_word(std::string_view text, std::string_view asked) {
    std::size_t at = 0;
    for (auto word = next_word(text, at); !word.empty(); word = next_word(text, at)) {
        if (std::equal(word.begin(), word.end(), asked.begin(), asked.end(),
                       [](char a, char b) { return lower(a) == lower(b); }))
            return true;
    }
    return false;
}

} // namespace

std::string quoted(const Model& model, ItemId item) { return "`" + model.item(item).name + "`"; }

std::string with_kind(const Model& model, ItemId item) {
    const Kind& kind = model.kind_of(item);
    const std::string& title = kind.title.empty() ? kind.name : kind.title;
    const std::uint16_t count = model.item(item).count;
    return quoted(model, item) + " (" + (count > 1 ? counted(count, title) : title) + ")";
}

std::string for_reader(const Model& model, ItemId item, bool article) {
    const Item& what = model.item(item);
    std::string words = title_or_name(what);
    const bool own_article = has_article(words);
    if (own_article) {
        words.erase(0, 4);
    }
    if (what.count > 1) {
        words.insert(0, std::to_string(what.count) + " ");
    }
    return article ? "the " + words : words;
}

std::string for_reader(const Model& model, const ItemRef& ref, bool article) {
    const Item& what = model.item(ref.item);
    if (ref.members.empty() || ref.members.size() >= what.count) {
        return for_reader(model, ref.item, article);
    }
    Item named = what;
    named.count = static_cast<std::uint16_t>(ref.members.size());
    std::string words = title_or_name(named);
    if (has_article(words)) {
        words.erase(0, 4);
    }
    std::vector<std::string> numbers;
    for (const std::uint16_t member : ref.members) {
        numbers.push_back(std::to_string(member));
    }
    return (article ? "the " : "") + words + " " + list(numbers);
}

std::string for_reader(const Quantity& quantity) {
    // Whole spellings first: "degC" must not lose its C to another rule.
    constexpr std::array<std::pair<std::string_view, std::string_view>, 12> printed{{
        {"degC", "°C"},
        {"degF", "°F"},
        {"deg", "°"},
        {"ohm", "Ω"},
        {"kohm", "kΩ"},
        {"Mohm", "MΩ"},
        {"um", "µm"},
        {"uF", "µF"},
        {"mm2", "mm²"},
        {"cm2", "cm²"},
        {"m2", "m²"},
        {"m3", "m³"},
    }};
    Quantity shown = quantity;
    for (const auto& [written, print] : printed) {
        if (quantity.unit == written) {
            shown.unit = Unit(print);
        }
    }
    if (quantity.measure == Measure::torque) {
        std::string unit(shown.unit);
        const auto dot = unit.find('.');
        if (dot != std::string::npos) {
            shown.unit = Unit(unit.replace(dot, 1, "·"));
        }
    }
    return to_text(shown);
}

std::string for_reader(const Limit& limit) {
    if (limit.least && limit.most) {
        const auto from = convert(*limit.least, limit.most->unit).value_or(*limit.least);
        return number_text(from.value) + " to " + for_reader(*limit.most);
    }
    std::string bound = to_text(limit);
    if (!limit.least && !limit.most) {
        return bound;
    }
    const Quantity& quantity = limit.least ? *limit.least : *limit.most;
    const std::size_t words = bound.size() - to_text(quantity).size();
    return bound.substr(0, words) + for_reader(quantity);
}

std::string list(const std::vector<std::string>& words, const char* joiner) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0) {
            text += i + 1 == words.size() ? " " + std::string(joiner) + " " : ", ";
        }
        text += words[i];
    }
    return text;
}

std::string states_in_words(const Kind& kind, StateSet states) {
    std::vector<std::string> words;
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        if (contains(states, static_cast<StateId>(i)))
            words.push_back("`" + kind.states[i] + "`");
    }
    return list(words, "or");
}

std::string counted(std::size_t count, const std::string& singular) {
    return std::to_string(count) + " " + (count == 1 ? singular : plural(singular));
}

// The word that is counted is the last before "of", a comma or a bracket, sizes left out: "length
// of hose", "screw M2".
std::string plural(const std::string& singular) {
    std::size_t end = singular.size();
    for (const std::string_view stop :
         {", ", " (", " of ", " with ", " for ", " in ", " on ", " to "}) {
        end = std::min(end, singular.find(stop));
    }
    while (end > 0) {
        const std::size_t space = singular.rfind(' ', end - 1);
        const std::size_t begin = space == std::string::npos ? 0 : space + 1;
        const std::string_view word = std::string_view(singular).substr(begin, end - begin);
        if (is_word_to_count(word) && word != "x") {
            return singular.substr(0, begin) + plural_word(word) + singular.substr(end);
        }
        end = begin == 0 ? 0 : space;
    }
    return singular;
}

bool may_be_plural(std::string_view word) {
    return word.ends_with('s') ||
           std::any_of(irregular.begin(), irregular.end(),
                       [&](const auto& forms) { return word == forms.second; });
}

std::vector<std::string_view> words_in(std::string_view description) {
    std::vector<std::string_view> words;
    std::size_t at = 0;
    for (auto word = next_word(description, at); !word.empty(); word = next_word(description, at))
        words.push_back(word);
    return words;
}

bool has_words(std::string_view description, std::string_view phrase) {
    std::size_t at = 0;
    std::string_view asked = next_word(phrase, at);
    if (asked.empty())
        return false;
    for (; !asked.empty(); asked = next_word(phrase, at)) {
        if (!has_word(description, asked))
            return false;
    }
    return true;
}

} // namespace matchmark::model
