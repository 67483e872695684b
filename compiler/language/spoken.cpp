// Parts, counts, quantities and lists in the reader's language.
#include "language/spoken.hpp"

#include "language/words.hpp"
#include "model/describe.hpp"
#include "source/replace_all.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/core.h>

namespace matchmark::language {

namespace {

// Without the count and the space after it.
void drop_count(std::string& text) {
    for (const std::string_view space : {" ", "\u00a0", "\u202f", ""}) {
        const std::string both = "{count}" + std::string(space);
        if (const auto at = text.find(both); at != std::string::npos) {
            text.erase(at, both.size());
            return;
        }
    }
}

// The form of an item for so many of it; null when it is not translated.
const std::string* form_of(const Language& language, const model::Model& model, model::ItemId item,
                           std::size_t count) {
    const ItemKey key = item_key(model, item);
    const Entry* entry = find_entry(language, key.context, key.one);
    if (entry == nullptr) {
        return nullptr;
    }
    const std::size_t form = key.many.empty() ? 0 : plural_index(language, count);
    return &entry->forms[std::min(form, entry->forms.size() - 1)];
}

std::string english_of(const Language& language, std::string words) {
    if (!language.marks_english || is_english(language)) {
        return words;
    }
    return std::string(english_begins) + words + std::string(english_ends);
}

// A number with its unit, as the language writes both.
std::string localized(const Language& language, const std::string& english) {
    const Traits& traits = traits_of(language);
    const std::size_t end = std::min(english.find(' '), english.size());
    std::string text = english.substr(0, end);
    replace_all(text, ".", traits.decimal);
    if (end == english.size()) {
        return text;
    }
    const std::string unit = english.substr(end + 1);
    text += unit == "%" ? traits.percent_space : traits.unit_space;
    return text + unit;
}

bool starts_with_any(std::string_view text, std::initializer_list<std::string_view> starts) {
    return std::any_of(starts.begin(), starts.end(),
                       [&](std::string_view start) { return text.starts_with(start); });
}

} // namespace

std::string with_article(const std::string& text, bool article) {
    const std::size_t close = text.starts_with('[') ? text.find(']') : std::string::npos;
    if (close == std::string::npos) {
        return text;
    }
    std::string rest = text.substr(close + 1);
    if (article) {
        return text.substr(1, close - 1) + rest;
    }
    rest.erase(0, rest.starts_with(' ') ? 1 : 0);
    return rest;
}

ItemKey item_key(const model::Model& model, model::ItemId id) {
    const model::Item& item = model.item(id);
    ItemKey key;
    key.context = "item " + item.name;
    std::string words = model::for_reader(model, id, false);
    if (item.count > 1) {
        words.erase(0, words.find(' ') + 1);
        key.many = "[the] {count} " + words;
        words = item.title.empty() ? spaced(item.name) : item.title;
        if (words.starts_with("the ")) {
            words.erase(0, 4);
        }
    }
    key.one = "[the] " + words;
    return key;
}

std::string said(const Language& language, const model::Model& model, model::ItemId id,
                 bool article) {
    if (is_english(language)) {
        return model::for_reader(model, id, article);
    }
    const std::string* form = form_of(language, model, id, model.item(id).count);
    if (form == nullptr) {
        return english_of(language, model::for_reader(model, id, article));
    }
    std::string words = with_article(*form, article);
    replace_all(words, "{count}", std::to_string(model.item(id).count));
    return words;
}

std::string said(const Language& language, const model::Model& model, const model::ItemRef& ref,
                 bool article) {
    if (is_english(language)) {
        return model::for_reader(model, ref, article);
    }
    if (ref.members.empty() || ref.members.size() >= model.item(ref.item).count) {
        return said(language, model, ref.item, article);
    }
    const std::string* form = form_of(language, model, ref.item, ref.members.size());
    if (form == nullptr) {
        return english_of(language, model::for_reader(model, ref, article));
    }
    std::string words = with_article(*form, article);
    drop_count(words);
    std::vector<std::string> numbers;
    for (const std::uint16_t member : ref.members) {
        numbers.push_back(std::to_string(member));
    }
    return words + " " + said_list(language, numbers);
}

std::string said_bare(const Language& language, const model::Model& model, model::ItemId id) {
    const std::string* form = form_of(language, model, id, model.item(id).count);
    if (form == nullptr) {
        std::string words = model::for_reader(model, id, false);
        if (model.item(id).count > 1) {
            words.erase(0, words.find(' ') + 1);
        }
        return english_of(language, words);
    }
    std::string words = with_article(*form, false);
    drop_count(words);
    return words;
}

std::string said_one(const Language& language, const model::Model& model, model::ItemId id) {
    const std::string* form = form_of(language, model, id, 1);
    return form != nullptr ? with_article(*form, false)
                           : english_of(language, with_article(item_key(model, id).one, false));
}

std::string said(const Language& language, const model::Quantity& quantity) {
    const std::string english = model::for_reader(quantity);
    return is_english(language) ? english : localized(language, english);
}

std::string said(const Language& language, const model::Limit& limit) {
    if (limit.least && limit.most) {
        const auto from = model::convert(*limit.least, limit.most->unit).value_or(*limit.least);
        return fill_text(
            text(language, "{least} to {most}"),
            {{"least", said_number(language, from.value)}, {"most", said(language, *limit.most)}});
    }
    if (!limit.least && !limit.most) {
        return model::for_reader(limit);
    }
    const std::string bound = said(language, limit.least ? *limit.least : *limit.most);
    if (limit.least) {
        return fill_text(limit.strict ? text(language, "above {bound}")
                                      : text(language, "at least {bound}"),
                         {{"bound", bound}});
    }
    return fill_text(limit.strict ? text(language, "below {bound}")
                                  : text(language, "at most {bound}"),
                     {{"bound", bound}});
}

std::string said_number(const Language& language, double value) {
    std::string number = model::number_text(value);
    replace_all(number, ".", traits_of(language).decimal);
    return number;
}

std::string said_time(const Language& language, double seconds) {
    const std::string_view space = traits_of(language).unit_space;
    const auto pair = [&](std::int64_t large, const char* of_large, std::int64_t small,
                          const char* of_small) {
        std::string words = fmt::format("{}{}{}", large, space, of_large);
        return small == 0 ? words : words + fmt::format(" {}{}{}", small, space, of_small);
    };
    const std::int64_t whole = std::llround(seconds);
    if (whole < 60)
        return fmt::format("{}{}s", whole, space);
    if (whole < 3600)
        return pair(whole / 60, "min", whole % 60, "s");
    const std::int64_t minutes = std::llround(seconds / 60);
    return pair(minutes / 60, "h", minutes % 60, "min");
}

// In Spanish "y" becomes "e" before the sound i, "o" becomes "u" before the sound o and before 8
// (Unicode CLDR, list patterns of es, as ICU carries them out).
std::string joined_by(const Language& language, std::string_view joiner, std::string_view next) {
    std::string word = joiner == "or" ? text(language, "or") : text(language, "and");
    if (language.tag == "es" && word == "y" &&
        starts_with_any(next, {"i", "I", "í", "Í", "hi", "Hi", "hí", "Hí"}) &&
        !starts_with_any(next, {"hia", "hie", "Hia", "Hie", "ia", "ie"})) {
        word = "e";
    }
    if (language.tag == "es" && word == "o" &&
        starts_with_any(next, {"o", "O", "ó", "Ó", "ho", "Ho", "hó", "Hó", "8"})) {
        word = "u";
    }
    return " " + word + " ";
}

std::string said_list(const Language& language, const std::vector<std::string>& words,
                      std::string_view joiner) {
    std::string list;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0) {
            list += i + 1 == words.size() ? joined_by(language, joiner, words[i]) : ", ";
        }
        list += words[i];
    }
    return list;
}

std::string verb_key(const std::string& verb) {
    return capital(english(), spaced(verb)) + " {the items}{how}";
}

std::string verb_pattern(const Language& language, const std::string& verb) {
    return own(language, "verb " + verb, verb_key(verb));
}

std::string verb_pattern_within(const Language& language, const std::string& verb) {
    const std::string pattern = verb_pattern(language, verb);
    return traits_of(language).nouns_large ? pattern : small(language, pattern);
}

std::string description_words(const Language& language, const std::string& phrase) {
    const Entry* entry =
        is_english(language) ? nullptr : find_entry(language, "description " + phrase, phrase);
    return entry == nullptr ? phrase : entry->forms.front();
}

std::string state_words(const Language& language, const std::string& state) {
    return own(language, "state " + state, spaced(state));
}

} // namespace matchmark::language
