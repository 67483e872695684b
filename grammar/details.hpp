// What may follow the keyword of an indented line: the details of items, kinds, guides, steps and
// tests.
#pragma once

#include "grammar/terms.hpp"

namespace matchmark::grammar {

// A line's rules, each of which must match, up to the line's end.
template <class... Rules> struct line : p::must<Rules..., end_of_line> {};

// ---- what an item is ----

struct spec_stop : p::sor<word<"in">, word<"only">, word<"kind">> {};
struct times_sign : p::seq<times, space> {};
struct spec_word : p::seq<p::not_at<spec_stop>, describing_word, space> {};
// `M2`, `x`, `6`, `0.10 mm`, `20..32 mm`
struct spec_part : p::sor<open_range, open_sum, bare_number, times_sign, spec_word> {};
struct spec : p::seq<kind_name, p::star<p::sor<spec_part, p::if_must<spaced_comma, spec_part>>>> {};
struct count_number : p::seq<whole_number, space> {};
struct counted_spec : p::if_must<p::seq<count_number, times_sign>, spec> {};

struct kind_of : line<spec> {};
struct counted : line<count_number, times_sign, spec> {};
struct amount : line<sum> {};

// ---- details of devices, items and functions ----

struct nothing_more : line<> {};
struct revision_part : p::sor<p::seq<describing_word, space>, bare_number, spaced_text> {};
struct revision : line<p::plus<revision_part>> {};
struct mass : line<sum> {};
struct sealed : line<rating, p::opt<after<"by", references>>> {};
struct variants : line<listed<variant_name>> {};

struct size_name : p::sor<bare_number, p::seq<p::not_at<fixed_word>, describing_word, space>> {};
struct carrier : line<item> {};
// Nobody has seen that it is so: it was inferred, and is to be looked at.
using assumed = p::opt<spaced_word<"assumed">>;
struct reference_list : line<references, assumed> {};
struct behind : line<either<references>, assumed> {};
struct tie_to : line<references, spaced_word<"to">, references, assumed> {};
struct feeds : line<references, p::opt<after<"through", references>>, assumed> {};
using alone = p::opt<spaced_word<"alone">>;
struct needs
    : line<condition, p::star<after<"or", state>>, spaced_word<"to">, verb, alone, assumed> {};
struct product_classes : line<listed<class_name>> {};
struct updates : line<count_number, spaced_word<"years">> {};
struct one_class : line<class_name> {};
// `supplied opening-pick with product`
struct supplied_tool : line<tool, p::opt<size_name>, spaced_word<"with">, class_name> {};
struct price : line<sum> {};
struct pattern : after<"in", pattern_name> {};
struct further_passes : p::if_must<spaced_comma, passes> {};
struct torque : line<sum, p::opt<pattern>, p::opt<further_passes>> {};
struct preload : torque {};
struct depth : line<sum, p::opt<after<"above", item>>> {};
struct used_again_if : line<words> {};
struct positions : line<face_name, p::opt<p::if_must<p::at<number>, points>>> {};
struct keep : line<listed<kept_thing>> {};
struct limit : line<measure_name, limit_value, p::opt<after<"when", conditions>>> {};
struct told_by : line<words> {};

// ---- details of kinds and their like ----

struct state_list : line<listed<state>> {};
struct transition : p::seq<listed<state>, p::must<arrow>, space, p::must<state>> {};
struct safe_when_live
    : p::seq<spaced_word<"safe">, p::must<spaced_word<"when">, spaced_word<"live">>> {};
struct from_outside : p::seq<spaced_word<"from">, p::must<spaced_word<"outside">>> {};
struct verb_option : p::sor<after<"by", either<tool>>, limit_value, safe_when_live, from_outside,
                            after<"takes", sum>, after<"waits", sum>, spaced_word<"decays">> {};
struct end_of_verb : end_of_line {};
struct verb_definition : p::must<transition, p::star<verb_option>, end_of_verb> {};
struct kind_needs : line<state, spaced_word<"to">, verb> {};
struct reach_or_touch : p::sor<spaced_word<"reach">, spaced_word<"touch">> {};
struct hazard_until
    : line<hazard_name, spaced_word<"until">, listed<state>, p::opt<after<"on", reach_or_touch>>> {
};
struct waste : line<class_name> {};
struct licensed : line<words> {};
struct driven_by : line<either<tool>> {};
struct good_for : line<count_number, spaced_word<"times">> {};
struct thread_name : p::seq<describing_word, space> {};
// `size 6 across 1.75 mm for M2 "ISO 14579"`
struct drive_size : line<size_name, p::opt<after<"across", sum>>,
                         p::opt<after<"for", listed<thread_name>>>, p::opt<words>> {};
// `at a pinch slotted-driver 1.8 for 6`
struct at_a_pinch : line<tool, p::opt<size_name>, spaced_word<"for">, size_name> {};
struct one_number : line<bare_number> {};
// `act undo screw, machine-screw 3.6 s`
struct timed_verb : line<verb, listed<kind_name>, sum> {};
struct form_of : line<form_name> {};
struct bears_on : line<range_of> {};
struct strength : line<sum, p::opt<after<"above", sum>>> {};
struct tool_class : p::sor<spaced_word<"none">, spaced_word<"basic">, spaced_word<"supplied">,
                           spaced_word<"available">, spaced_word<"special">> {};
struct class_of_tool : line<tool_class> {};
struct torques : line<range_of> {};
struct sign_of : line<sign_name> {};
struct sign_number : p::seq<describing_word, space> {};
struct number_of_sign : line<sign_number> {};
struct outline : line<words> {};
struct wear : line<listed<gear_name>> {};
struct order : line<listed<verb>> {};
struct lit_by : line<listed<hazard_name>> {};

// ---- actions ----

struct embedded_action;
struct marked_or_class : p::sor<spaced_word<"marked">, class_name> {};
struct means : p::sor<sum, item> {};
struct action_option : p::sor<after<"with", tools>, after<"to", sum>, after<"in", pattern_name>,
                              passes, after<"for", sum>, after<"through", means>, limit_value,
                              open_sum, after<"as", marked_or_class>, after<"across", references>,
                              after<"else", embedded_action>> {};
struct action_options : p::star<p::sor<action_option, p::if_must<spaced_comma, action_option>>> {};
struct no_item : p::at<p::sor<word<"with">, word<"to">, word<"for">, word<"as">>> {};

// What follows each sort of verb.
struct general_arguments : p::seq<p::must<references>, action_options> {};
struct measure_arguments
    : p::seq<p::must<item>, p::opt<member>, p::opt<measure_name>, action_options> {};
struct do_arguments : p::must<guide_name> {};

// An action that stands inside a line: after `goal`, `before` and `else`.
struct measure_verb : p::seq<p::at<word<"measure">>, verb> {};
struct do_verb : p::seq<p::at<word<"do">>, verb> {};
struct embedded_action
    : p::sor<p::seq<measure_verb, measure_arguments>, p::seq<do_verb, do_arguments>,
             p::seq<verb, p::sor<p::seq<no_item, action_options>, general_arguments>>> {};

struct end_of_action : end_of_line {};
struct action : p::seq<general_arguments, p::must<end_of_action>> {};
struct measure : p::seq<measure_arguments, p::must<end_of_action>> {};
struct do_guide : line<guide_name> {};

// ---- details of guides, steps and tests ----

// A goal may list actions: `goal replace cell with cell-new, remove fan`.
struct goal_comma : p::seq<p::not_at<p::seq<spaced_comma, free_name, free_name>>, spaced_comma> {};
struct goal_references : p::seq<reference, p::star<p::if_must<goal_comma, next_reference>>> {};
struct goal_tools : p::seq<tool, p::star<p::if_must<goal_comma, tool>>> {};
struct one_goal : p::seq<verb, p::must<goal_references>, p::opt<after<"with", goal_tools>>> {};
struct goal : p::must<listed<one_goal>, end_of_action> {};
struct before : p::must<embedded_action, end_of_action> {};

struct reader_level : p::sor<spaced_word<"novice">, spaced_word<"competent">,
                             spaced_word<"trained">, after<"licensed", words>> {};
struct for_reader : line<reader_level> {};
struct amount_or_price : p::seq<number, space, p::opt<spaced_unit>> {};
struct stock : line<new_name, description, p::star<p::if_must<spaced_comma, amount_or_price>>,
                    p::opt<after<"for", references>>> {};
struct listed_tool : line<new_name, description, p::opt<p::if_must<spaced_comma, tool_class>>> {};
struct author : line<words> {};
struct date : p::seq<p::rep<4, p::digit>, p::one<'-'>, p::rep<2, p::digit>, p::one<'-'>,
                     p::rep<2, p::digit>> {};
struct dated : line<date> {};
struct photo : line<path, caption> {};
struct photo_member : p::seq<p::not_at<point>, member> {};
struct photo_members : p::seq<photo_member, p::star<p::seq<spaced_comma, photo_member>>> {};
struct mark_on_photo : line<item, p::opt<photo_members>, points> {};
struct when : line<conditions> {};
struct proves : line<references> {};
struct with : line<tools> {};

} // namespace matchmark::grammar
