// The language in which a reader holds the guide: its sentences, its plurals, how it writes
// numbers.
#include "language/language.hpp"

#include "model/spelling.hpp"

#include <algorithm>
#include <array>
#include <utf8proc.h>

namespace matchmark::language {

namespace {

constexpr std::string_view none = "";
constexpr std::string_view space = " ";
constexpr std::string_view no_break = "\u00a0";
constexpr std::string_view narrow = "\u202f";

// Where CLDR has an ordinary space before a unit, it does not break here: a number keeps its unit.
// "qaa" is one of the tags that ISO 639-2 leaves to private use: words in brackets, for tests.
constexpr std::array<Traits, 8> table{{
    {"de", "German", PluralRule::one_alone, ",", no_break, no_break, true},
    {"en", "English", PluralRule::one_alone, ".", space, space},
    {"es", "Spanish", PluralRule::one_alone, ",", no_break, no_break},
    {"fr", "French", PluralRule::none_and_one, ",", narrow, no_break},
    {"it", "Italian", PluralRule::one_alone, ",", no_break, none},
    {"nl", "Dutch", PluralRule::one_alone, ",", no_break, none},
    {"qaa", "words in brackets, for tests", PluralRule::one_alone, ".", space, space},
    {"sv", "Swedish", PluralRule::one_alone, ",", no_break, no_break},
}};

constexpr std::size_t english_row = 1;
static_assert(table[english_row].tag == "en");

std::string marked(const Language& language, std::string_view english) {
    if (!language.marks_english || is_english(language) || english.empty()) {
        return std::string(english);
    }
    return std::string(english_begins) + std::string(english) + std::string(english_ends);
}

const Entry* entry_in(const Language& language, std::string_view context, std::string_view english,
                      bool any) {
    if (!language.table) {
        return nullptr;
    }
    const auto found = language.table->find(english);
    if (found == language.table->end()) {
        return nullptr;
    }
    for (const Entry& entry : found->second) {
        if (entry.context == context) {
            return &entry;
        }
    }
    if (!any) {
        return nullptr;
    }
    // What is a step's in one place is one in another too; a state is never a title.
    const std::string_view sort = sort_of(context);
    const auto other =
        std::find_if(found->second.begin(), found->second.end(),
                     [&](const Entry& entry) { return sort_of(entry.context) == sort; });
    return other == found->second.end() ? nullptr : &*other;
}

} // namespace

std::span<const Traits> known_languages() { return table; }

const Traits* find_traits(std::string_view tag) {
    const auto* found = std::find_if(table.begin(), table.end(),
                                     [&](const Traits& traits) { return traits.tag == tag; });
    return found == table.end() ? nullptr : found;
}

std::string plural_forms(const Traits& traits) {
    return traits.plural == PluralRule::none_and_one ? "nplurals=2; plural=(n > 1);"
                                                     : "nplurals=2; plural=(n != 1);";
}

bool is_english(const Language& language) { return language.tag == "en"; }

const Language& english() {
    static const Language plain;
    return plain;
}

const Traits& traits_of(const Language& language) {
    const Traits* found = find_traits(language.tag);
    return found == nullptr ? table[english_row] : *found;
}

std::string_view sort_of(std::string_view context) { return context.substr(0, context.find(' ')); }

const Entry* find_entry(const Language& language, std::string_view context,
                        std::string_view english) {
    if (language.asked) {
        language.asked->insert({std::string(sort_of(context)), std::string(english)});
    }
    return entry_in(language, context, english, !context.empty());
}

std::size_t plural_index(const Language& language, std::size_t count) {
    const bool one =
        count == 1 || (count == 0 && traits_of(language).plural == PluralRule::none_and_one);
    return one ? 0 : 1;
}

std::string text(const Language& language, std::string_view english) {
    return text_in(language, "", english);
}

std::string text_in(const Language& language, std::string_view context, std::string_view english) {
    const Entry* entry = entry_in(language, context, english, false);
    return entry == nullptr ? marked(language, english) : entry->forms.front();
}

std::string counted(const Language& language, std::size_t count, std::string_view one,
                    std::string_view many) {
    const std::size_t form = plural_index(language, count);
    const Entry* entry = entry_in(language, "", one, false);
    if (entry != nullptr && form < entry->forms.size()) {
        return entry->forms[form];
    }
    return marked(language, count == 1 ? one : many);
}

std::string own(const Language& language, std::string_view context, const std::string& english) {
    if (english.empty() || is_english(language)) {
        return english;
    }
    const Entry* entry = find_entry(language, context, english);
    return entry == nullptr ? marked(language, english) : entry->forms.front();
}

std::string own_prose(const Language& language, std::string_view context,
                      const std::string& markdown) {
    const Entry* entry = is_english(language) || markdown.empty()
                             ? nullptr
                             : find_entry(language, context, markdown);
    if (entry != nullptr) {
        return entry->forms.front();
    }
    if (!language.marks_english || is_english(language)) {
        return markdown;
    }
    return std::string(english_begins) + "\n\n" + markdown + "\n\n" + std::string(english_ends);
}

namespace {

// The first letter as `other` has it.
std::string with_first(std::string text, utf8proc_int32_t (*other)(utf8proc_int32_t)) {
    const std::size_t start = text.starts_with(english_begins) ? english_begins.size() : 0;
    utf8proc_int32_t letter = 0;
    const auto* bytes = reinterpret_cast<const utf8proc_uint8_t*>(text.data() + start);
    const auto length =
        utf8proc_iterate(bytes, static_cast<utf8proc_ssize_t>(text.size() - start), &letter);
    if (length <= 0) {
        return text;
    }
    std::array<utf8proc_uint8_t, 4> changed{};
    const auto written = utf8proc_encode_char(other(letter), changed.data());
    text.replace(start, static_cast<std::size_t>(length),
                 std::string(changed.begin(), changed.begin() + written));
    return text;
}

} // namespace

std::string capital(const Language& language, std::string text) {
    if (!is_english(language)) {
        return with_first(std::move(text), utf8proc_toupper);
    }
    return model::capitalised(std::move(text));
}

std::string small(const Language& language, std::string text) {
    if (!is_english(language)) {
        return with_first(std::move(text), utf8proc_tolower);
    }
    if (!text.empty() && text.front() >= 'A' && text.front() <= 'Z') {
        text.front() = static_cast<char>(text.front() - 'A' + 'a');
    }
    return text;
}

} // namespace matchmark::language
