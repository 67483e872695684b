// The language in which a reader holds the guide: its sentences, its plurals, how it writes
// numbers.
//
// English is the language of the sources and of the compiler itself: what is asked for is the key,
// and English gives it back unchanged.
#pragma once

#include <map>
#include <memory>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace matchmark::language {

// Which numbers take the singular (Unicode CLDR 41, plurals.xml, cardinal rules for whole numbers).
enum class PluralRule : unsigned char {
    one_alone,   // 1
    none_and_one // 0 and 1
};

// How a language is written (Unicode CLDR 41: symbols, unit and percent patterns).
struct Traits {
    std::string_view tag;  // of BCP 47: "de"
    std::string_view name; // in English
    PluralRule plural = PluralRule::one_alone;
    std::string_view decimal;       // "," in "0,2"
    std::string_view unit_space;    // between a number and its unit
    std::string_view percent_space; // between a number and %
    bool nouns_large = false;       // each noun begins with a large letter
};

std::span<const Traits> known_languages();
// Nothing when no rules are known for the tag.
const Traits* find_traits(std::string_view tag);
// "nplurals=2; plural=(n != 1);"
std::string plural_forms(const Traits& traits);

// One translation: a form for each plural of the language, or one alone.
struct Entry {
    std::string context;
    std::vector<std::string> forms;
};

// By the English text.
using Table = std::map<std::string, std::vector<Entry>, std::less<>>;

// What was asked for: the sort of a context ("step" of "step open") and the English text.
using Asked = std::set<std::pair<std::string, std::string>>;

struct Language {
    std::string tag = "en";
    bool marks_english = false; // what has no translation stands between the signs below
    std::shared_ptr<const Table> table = {};
    std::shared_ptr<Asked> asked = {}; // when it is there, what is asked for is noted in it
};

// Around what stands in English for want of a translation: noncharacters, which no text may hold
// (The Unicode Standard, 23.7), so that a page can say lang="en" of it.
constexpr std::string_view english_begins = "\xEF\xB7\x90";
constexpr std::string_view english_ends = "\xEF\xB7\x91";

// The first word of a context.
std::string_view sort_of(std::string_view context);

bool is_english(const Language& language);
const Language& english();
const Traits& traits_of(const Language& language);

// The translation of that context, or else of another of its sort ("step open", "step close"); null
// when there is none.
const Entry* find_entry(const Language& language, std::string_view context,
                        std::string_view english);
// Which form of an entry a number takes.
std::size_t plural_index(const Language& language, std::size_t count);

// A sentence of the compiler's own.
std::string text(const Language& language, std::string_view english);
// The same with a context, where one English word has two translations.
std::string text_in(const Language& language, std::string_view context, std::string_view english);
// The one or the other by a number; `{count}` in it is left to be filled.
std::string counted(const Language& language, std::size_t count, std::string_view one,
                    std::string_view many);
// Of a text that an author wrote, or the parts library: marked when it stands in English.
std::string own(const Language& language, std::string_view context, const std::string& english);
// The same of Markdown, whose blocks must not change.
std::string own_prose(const Language& language, std::string_view context,
                      const std::string& markdown);

// First letter large.
std::string capital(const Language& language, std::string text);
// First letter small.
std::string small(const Language& language, std::string text);

} // namespace matchmark::language
