// What each rule of the grammar is called in a message: "expected a tool after `with`".
//
// Every rule that must match needs words here; one without does not compile.
#pragma once

#include "grammar/declarations.hpp"

#include <array>
#include <cstddef>
#include <type_traits>

namespace matchmark::syntax {

namespace g = matchmark::grammar;

// A null pointer by type: no words, so the rule may not be demanded. Empty words: the rule cannot
// fail.
template <class Rule> inline constexpr std::nullptr_t expected_words = nullptr;
template <class Rule>
inline constexpr bool has_words =
    !std::is_null_pointer_v<std::remove_cv_t<decltype(expected_words<Rule>)>>;

// ---- rules that cannot fail ----

template <class... Rules> inline constexpr const char* expected_words<g::p::opt<Rules...>> = "";
template <class Rule, class... Rules>
inline constexpr const char* expected_words<g::p::star<Rule, Rules...>> = "";
template <> inline constexpr const char* expected_words<g::space> = "";
template <> inline constexpr const char* expected_words<g::optional_title> = "";
template <> inline constexpr const char* expected_words<g::action_options> = "";

// ---- fixed words, shown as they are written ----

template <g::Spelling Text> struct QuotedWord {
    static constexpr auto letters = [] {
        std::array<char, Text.length + 3> quoted{};
        quoted[0] = '`';
        for (std::size_t at = 0; at < Text.length; ++at) {
            quoted[at + 1] = Text.letters[at];
        }
        quoted[Text.length + 1] = '`';
        return quoted;
    }();
};
template <g::Spelling Text>
inline constexpr const char*
    expected_words<g::p::seq<g::word<Text>, g::space>> = QuotedWord<Text>::letters.data();

// ---- lists are called what their first member is ----

template <class Rule> inline constexpr auto expected_words<g::listed<Rule>> = expected_words<Rule>;
template <class Rule> inline constexpr auto expected_words<g::either<Rule>> = expected_words<Rule>;
template <class Rule> inline constexpr auto expected_words<g::p::plus<Rule>> = expected_words<Rule>;

// ---- names, texts, numbers ----

template <> inline constexpr const char* expected_words<g::new_name> = "a name";
template <> inline constexpr const char* expected_words<g::item> = "an item";
template <> inline constexpr const char* expected_words<g::tool> = "a tool";
template <> inline constexpr const char* expected_words<g::tools> = "a tool";
template <> inline constexpr const char* expected_words<g::verb> = "a verb";
template <> inline constexpr const char* expected_words<g::variant_name> = "a variant";
template <> inline constexpr const char* expected_words<g::face_name> = "a face";
template <> inline constexpr const char* expected_words<g::guide_name> = "a guide";
template <> inline constexpr const char* expected_words<g::kind_name> = "a kind";
template <> inline constexpr const char* expected_words<g::spec> = "a kind";
template <> inline constexpr const char* expected_words<g::class_name> = "a class of waste";
template <>
inline constexpr const char* expected_words<g::pattern_name> = "a pattern, such as star";
template <> inline constexpr const char* expected_words<g::hazard_name> = "a hazard";
template <>
inline constexpr const char* expected_words<g::measure_name> = "what is measured, such as length";
template <> inline constexpr const char* expected_words<g::kept_thing> = "`order` or `face`";
template <> inline constexpr const char* expected_words<g::rating> = "a rating, such as IP67";
template <> inline constexpr const char* expected_words<g::thread_name> = "a thread, such as M2";
template <>
inline constexpr const char* expected_words<g::grade_name> = "a grade, such as class-8.8";
template <> inline constexpr const char* expected_words<g::form_name> = "a form of thread";
template <> inline constexpr const char* expected_words<g::sign_name> = "a sign";
template <> inline constexpr const char* expected_words<g::gear_name> = "protective gear";
template <> inline constexpr const char* expected_words<g::size_name> = "a size";
template <>
inline constexpr const char* expected_words<g::sign_number> = "a sign's number, such as W012";
template <>
inline constexpr const char* expected_words<g::range_of> = "a range, such as 2.4..3.8 mm";
template <>
inline constexpr const char* expected_words<g::tool_class> =
    "a class: `none`, `basic`, `supplied`, `available` or `special`";
template <> inline constexpr const char* expected_words<g::title> = "a title in double quotes";
template <> inline constexpr const char* expected_words<g::words> = "text in double quotes";
template <> inline constexpr const char* expected_words<g::path> = "a path in double quotes";
template <>
inline constexpr const char* expected_words<g::caption> = "its caption in double quotes";
template <>
inline constexpr const char* expected_words<g::description> = "its description in double quotes";
template <> inline constexpr const char* expected_words<g::state> = "a state";
template <>
inline constexpr const char* expected_words<g::arrow> = "`->` and the state it leads to";
template <> inline constexpr const char* expected_words<g::number> = "a number";
template <> inline constexpr const char* expected_words<g::bare_number> = "a number";
template <> inline constexpr const char* expected_words<g::range_end> = "a number";
template <> inline constexpr const char* expected_words<g::times_sign> = "`x`";
template <>
inline constexpr const char* expected_words<g::spaced_unit> = "a unit, such as mm or N.m";
template <> inline constexpr const char* expected_words<g::quantity> = "a number with its unit";
template <> inline constexpr const char* expected_words<g::sum> = "a number with its unit";
template <>
inline constexpr const char* expected_words<g::amount_or_price> = "a count, an amount or a price";
template <> inline constexpr const char* expected_words<g::date> = "a date, such as 2026-03-31";
template <>
inline constexpr const char* expected_words<g::point> = "a place, such as 5,5 with no space in it";
template <>
inline constexpr const char* expected_words<g::points> = "a place, such as 5,5 with no space in it";

// ---- parts of lines ----

template <> inline constexpr const char* expected_words<g::references> = "an item";
template <>
inline constexpr const char* expected_words<g::next_reference> = "an item, or a member's number";
template <> inline constexpr const char* expected_words<g::condition> = "an item and its state";
template <> inline constexpr const char* expected_words<g::conditions> = "an item and its state";
template <> inline constexpr const char* expected_words<g::least_or_most> = "`least` or `most`";
template <>
inline constexpr const char* expected_words<g::limit_value> = "a limit, such as `at least 5 mm`";
template <>
inline constexpr const char* expected_words<g::spec_part> = "a word or a size that describes it";
template <>
inline constexpr const char* expected_words<g::revision_part> = "the revision, such as B";
template <> inline constexpr const char* expected_words<g::passes> = "a count of passes";
template <> inline constexpr const char* expected_words<g::count_number> = "a count";
template <> inline constexpr const char* expected_words<g::transition> = "a state";
template <> inline constexpr const char* expected_words<g::reach_or_touch> = "`reach` or `touch`";
template <>
inline constexpr const char* expected_words<g::role> = "a role, such as part or fastener";
template <>
inline constexpr const char* expected_words<g::reader_level> =
    "a reader: `novice`, `competent`, `trained` or `licensed`";
template <>
inline constexpr const char* expected_words<g::marked_or_class> = "`marked`, or a class of waste";
template <> inline constexpr const char* expected_words<g::means> = "a quantity or an item";
template <>
inline constexpr const char* expected_words<g::action_option> =
    "an item, `else` or a count of passes";
template <> inline constexpr const char* expected_words<g::embedded_action> = "an action";
template <> inline constexpr const char* expected_words<g::one_goal> = "an action";
template <> inline constexpr const char* expected_words<g::goal_references> = "an item";
template <> inline constexpr const char* expected_words<g::goal_tools> = "a tool or a spare";

// ---- ends of lines ----

template <> inline constexpr const char* expected_words<g::end_of_line> = "the end of the line";
template <>
inline constexpr const char* expected_words<g::end_of_head> = "`in`, `kind` or the end of the line";
template <>
inline constexpr const char* expected_words<g::end_of_verb> =
    "`by`, `takes`, `waits` or the end of the line";
template <>
inline constexpr const char* expected_words<g::end_of_action> =
    "`with`, `to` or the end of the line";

} // namespace matchmark::syntax
