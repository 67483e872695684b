// The small things that every line is made of: names, texts, quantities, references, conditions,
// limits.
//
// A rule that reads a term also reads the spaces after it, so that no rule has to begin with
// spaces.
#pragma once

#include <tao/pegtl.hpp>

#include <cstddef>
#include <utility>

namespace matchmark::grammar {

namespace p = tao::pegtl;

// ---- spaces, comments, the end of a line ----

struct space : p::star<p::one<' ', '\t'>> {};
struct comment : p::seq<p::one<'#'>, p::until<p::eof>> {};
struct end_of_line : p::seq<space, p::opt<comment>, p::eof> {};

// ---- letters ----

// Code points past ASCII that are no letters: signs, punctuation, spaces, arrows, pictures.
struct no_letter
    : p::sor<p::utf8::range<0x80, 0xA9>, p::utf8::range<0xAB, 0xB4>, p::utf8::range<0xB6, 0xB9>,
             p::utf8::range<0xBB, 0xBF>, p::utf8::one<0xD7, 0xF7>, p::utf8::range<0x2000, 0x2125>,
             p::utf8::range<0x2127, 0x2BFF>, p::utf8::range<0x2E00, 0x2E7F>,
             p::utf8::range<0x3000, 0x3004>, p::utf8::range<0x3008, 0x3030>, p::utf8::one<0x30FB>,
             p::utf8::range<0xE000, 0xF8FF>, p::utf8::range<0xFD3E, 0xFD3F>,
             p::utf8::range<0xFE10, 0xFE6F>, p::utf8::range<0xFEFF, 0xFF20>,
             p::utf8::range<0xFF3B, 0xFF40>, p::utf8::range<0xFF5B, 0xFF65>,
             p::utf8::range<0xFFE0, 0xFFFF>, p::utf8::range<0x1F000, 0x1FAFF>,
             p::utf8::range<0xE0000, 0x10FFFF>> {};
// Accents and vowel signs that follow a letter; a name never starts with one.
struct mark_on_letter
    : p::sor<
          p::utf8::range<0x300, 0x36F>, p::utf8::range<0x483, 0x489>, p::utf8::range<0x591, 0x5C7>,
          p::utf8::range<0x610, 0x61A>, p::utf8::range<0x64B, 0x669>, p::utf8::range<0x900, 0x903>,
          p::utf8::range<0x93A, 0x93C>, p::utf8::range<0x93E, 0x94F>, p::utf8::range<0x966, 0x96F>,
          p::utf8::range<0xE31, 0xE31>, p::utf8::range<0xE34, 0xE3A>, p::utf8::range<0xE47, 0xE4E>,
          p::utf8::range<0x302A, 0x302F>, p::utf8::range<0x3099, 0x309A>> {};
struct past_ascii : p::not_at<p::range<'\0', '\x7F'>> {};
struct other_letter : p::seq<past_ascii, p::not_at<p::sor<no_letter, mark_on_letter>>,
                             p::utf8::range<0x80, 0x10FFFF>> {};
struct letter : p::sor<p::alpha, other_letter> {};
struct letter_or_digit
    : p::sor<p::alpha, p::digit, other_letter, p::seq<past_ascii, mark_on_letter>> {};
struct name_part : p::sor<letter_or_digit, p::seq<p::one<'-'>, p::at<letter_or_digit>>> {};

// ---- fixed words ----

// A word's letters as a template argument: word<"with">.
template <std::size_t Size> struct Spelling {
    char letters[Size] = {};

    consteval Spelling(const char (&text)[Size]) { // NOLINT(google-explicit-constructor)
        for (std::size_t at = 0; at < Size; ++at) {
            letters[at] = text[at];
        }
    }
    static constexpr std::size_t length = Size - 1;
};

template <Spelling Text, class = std::make_index_sequence<Text.length>> struct letters_of;
template <Spelling Text, std::size_t... At>
struct letters_of<Text, std::index_sequence<At...>> : p::string<Text.letters[At]...> {};

template <Spelling Text> struct word : p::seq<letters_of<Text>, p::not_at<name_part>> {};
template <Spelling Text> using spaced_word = p::seq<word<Text>, space>;
// A fixed word that, once read, must be followed by the rest.
template <Spelling Text, class... Rest> using after = p::if_must<spaced_word<Text>, Rest...>;

// The sign between two sizes: `74 x 128`, `74x128`.
struct times : p::seq<p::one<'x'>, p::not_at<p::sor<letter, p::one<'-'>>>> {};

// Words that tie the parts of a line together, and so are no names of items, tools or verbs.
struct fixed_word
    : p::sor<word<"with">, word<"to">, word<"for">, word<"in">, word<"as">, word<"by">, word<"or">,
             word<"on">, word<"when">, word<"else">, word<"through">, word<"below">, word<"above">,
             word<"at">, word<"across">, word<"is">, word<"until">, word<"only">, word<"kind">,
             word<"x">> {};

// ---- names and texts ----

struct name : p::seq<letter, p::star<name_part>> {};
// A word that describes: `M1.6`, `countersunk`, `IP67`, `B`.
struct describing_word
    : p::seq<letter, p::star<p::sor<name_part, p::seq<p::one<'.', '/'>, p::at<letter_or_digit>>>>> {
};
struct free_name : p::seq<p::not_at<fixed_word>, name, space> {};
struct text
    : p::seq<p::one<'"'>,
             p::star<p::sor<p::seq<p::one<'\\'>, p::one<'"', '\\'>>, p::not_one<'"', '\\'>>>,
             p::one<'"'>> {};
struct spaced_text : p::seq<text, space> {};

struct comma : p::one<','> {};
struct spaced_comma : p::seq<comma, space> {};
struct arrow : p::string<'-', '>'> {};

// What a name stands for; each is its own rule so that a message can say what was expected.
struct new_name : free_name {};
struct item : free_name {};
struct tool : free_name {};
struct verb : free_name {};
struct variant_name : free_name {};
struct face_name : free_name {};
struct guide_name : free_name {};
struct kind_name : free_name {};
struct class_name : free_name {};
struct pattern_name : free_name {};
struct hazard_name : free_name {};
struct measure_name : free_name {};
struct kept_thing : free_name {};
struct form_name : free_name {};
struct sign_name : free_name {};
struct gear_name : free_name {};
struct rating : p::seq<p::not_at<fixed_word>, describing_word, space> {};
struct title : spaced_text {};
struct words : spaced_text {};
struct path : spaced_text {};
struct caption : spaced_text {};
struct description : spaced_text {};

// States may be called `in` and `on`.
struct state : p::seq<p::not_at<p::seq<p::not_at<p::sor<word<"in">, word<"on">>>, fixed_word>>,
                      name, space> {};

template <class Rule> struct listed : p::seq<Rule, p::star<p::if_must<spaced_comma, Rule>>> {};
template <class Rule> struct either : p::seq<Rule, p::star<after<"or", Rule>>> {};

// ---- numbers, units, quantities ----

struct whole_number : p::plus<p::digit> {};
struct number : p::seq<p::opt<p::one<'-', '+'>>, p::plus<p::digit>,
                       p::opt<p::seq<p::one<'.'>, p::at<p::digit>, p::plus<p::digit>>>> {};
struct range_sign : p::string<'.', '.'> {};
struct plus_sign : p::one<'+'> {};
struct minus_sign : p::one<'-'> {};

struct unit_letter : p::sor<p::alpha, p::one<'%'>, p::utf8::one<0xB0, 0xB5, 0x3BC, 0x3A9, 0x2126>> {
};
struct unit_part
    : p::sor<unit_letter, p::digit,
             p::seq<p::one<'.', '/', '*', '^'>, p::at<p::sor<unit_letter, p::digit>>>> {};
// Anything shaped like a unit; whether it is one is not the grammar's business.
struct unit : p::seq<p::not_at<fixed_word>, unit_letter, p::star<unit_part>> {};
struct spaced_unit : p::seq<unit, space> {};

// The usual units, for places where a describing word could follow the number instead.
struct unit_prefix
    : p::sor<p::one<'k', 'M', 'G', 'm', 'c', 'd', 'u', 'n', 'p', 'h'>, p::utf8::one<0xB5, 0x3BC>> {
};
struct base_unit
    : p::sor<p::string<'o', 'h', 'm'>, p::string<'b', 'a', 'r'>, p::string<'A', 'h'>,
             p::string<'W', 'h'>, p::string<'H', 'z'>, p::string<'P', 'a'>, p::string<'V', 'A'>,
             p::string<'l', 'm'>, p::string<'l', 'x'>,
             p::one<'m', 'g', 's', 'A', 'V', 'W', 'N', 'J', 'l', 'L', 'F', 'H', 'K', 't'>,
             p::utf8::one<0x3A9, 0x2126>> {};
struct special_unit
    : p::sor<p::one<'%'>, p::seq<p::opt<p::utf8::one<0xB0>>, p::one<'C', 'F'>>, p::utf8::one<0xB0>,
             p::string<'d', 'e', 'g', 'C'>, p::string<'d', 'e', 'g', 'F'>, p::string<'d', 'e', 'g'>,
             p::string<'m', 'i', 'n'>, p::string<'i', 'n', 'c', 'h'>, p::string<'f', 't'>,
             p::string<'l', 'b', 'f'>, p::string<'l', 'b'>, p::string<'o', 'z', 'f'>,
             p::string<'o', 'z'>, p::string<'p', 's', 'i'>, p::string<'r', 'p', 'm'>,
             p::string<'d', 'B'>, p::string<'E', 'U', 'R'>, p::string<'i', 'n'>, p::one<'h'>,
             p::one<'d'>> {};
template <class Rule> using one_unit = p::seq<Rule, p::opt<p::one<'^'>>, p::opt<p::digit>>;
struct unit_factor : p::sor<p::seq<one_unit<special_unit>,
                                   p::at<p::sor<p::one<'.', '/', '*'>, p::not_at<unit_part>>>>,
                            p::seq<one_unit<p::seq<unit_prefix, base_unit>>,
                                   p::at<p::sor<p::one<'.', '/', '*'>, p::not_at<unit_part>>>>,
                            one_unit<base_unit>> {};
struct usual_unit
    : p::seq<p::at<p::seq<unit_factor, p::star<p::seq<p::one<'.', '/', '*'>, unit_factor>>,
                          p::not_at<p::sor<unit_part, name_part>>>>,
             spaced_unit> {};

struct quantity : p::seq<number, space, p::must<spaced_unit>> {};
struct sum_sign : p::seq<p::sor<plus_sign, minus_sign>, space> {};
struct sum : p::seq<quantity, p::star<p::if_must<sum_sign, quantity>>> {};
struct range_of
    : p::seq<number, space, range_sign, space, p::must<number>, space, p::must<spaced_unit>> {};
struct range_end : p::seq<number, space> {};

// The same where the unit is optional: `hexalobular 6`, `hose-clamp 20..32 mm`, `80 degC`.
struct open_quantity : p::seq<number, space, usual_unit> {};
struct open_sum : p::seq<open_quantity, p::star<p::seq<sum_sign, open_quantity>>> {};
struct open_range
    : p::seq<number, space, range_sign, space, p::must<range_end>, p::opt<usual_unit>> {};
struct bare_number : p::seq<number, space> {};

struct least_or_most : p::sor<spaced_word<"least">, spaced_word<"most">> {};
// `at least Q`, `at most Q`, `below Q`, `above Q`, or `0.05..0.15 mm`.
struct limit_value
    : p::sor<after<"at", least_or_most, sum>, after<"below", sum>, after<"above", sum>, range_of> {
};

// A place on a face or a photo, `5,5`: no space inside, which tells it from a list of members.
struct point : p::seq<number, comma, number, space> {};
struct points : p::plus<point> {};

// ---- references and conditions ----

struct passes : p::seq<whole_number, space, p::sor<spaced_word<"passes">, spaced_word<"pass">>> {};
// A member of a group, by number, and not the start of a quantity.
struct member : p::seq<whole_number,
                       p::not_at<p::sor<p::seq<p::one<'.'>, p::digit>, range_sign, letter,
                                        p::seq<space, p::sor<usual_unit, range_sign, word<"passes">,
                                                             word<"pass">, word<"x">>>>>,
                       space> {};
struct reference : p::seq<item, p::opt<member>> {};
struct next_reference : p::sor<member, reference> {};
// A comma after which a list goes on; `, else` and `, 3 passes` belong to the action.
struct list_comma
    : p::seq<p::not_at<p::seq<spaced_comma, p::sor<word<"else">, passes>>>, spaced_comma> {};
struct references : p::seq<reference, p::star<p::if_must<list_comma, next_reference>>> {};
struct tools : p::seq<tool, p::star<p::if_must<list_comma, tool>>> {};

struct condition : p::seq<item, p::opt<member>, p::must<state>> {};
struct conditions : listed<condition> {};

} // namespace matchmark::grammar
