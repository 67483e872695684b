// What may follow the keyword of a line in the first column: what each declaration's head says.
#pragma once

#include "grammar/details.hpp"

namespace matchmark::grammar {

struct optional_title : p::opt<spaced_text> {};

// ---- devices and what they are made of ----

struct use : line<path> {};
struct device : line<new_name, title> {};
struct corner : p::if_must<spaced_comma, spaced_word<"corner">, sum> {};
struct face : line<new_name, optional_title, bare_number, times_sign, quantity, p::opt<corner>> {};

struct head_in : after<"in", item> {};
struct head_only : after<"only", listed<variant_name>> {};
struct head_kind : after<"kind", spec> {};
struct head_part : p::sor<head_in, head_only, head_kind, counted_spec> {};
struct end_of_head : end_of_line {};
// `part lid "display lid" in back kind hinged-cover`
struct item_head : p::must<new_name, optional_title, p::star<head_part>, end_of_head> {};
// A fluid's head may also say how much there is.
struct fluid_head
    : p::must<new_name, optional_title,
              p::star<p::sor<head_in, head_only, head_kind, counted_spec, sum>>, end_of_head> {};
struct function_head : line<new_name, optional_title> {};
struct safety_message
    : line<new_name, spaced_word<"on">, references, p::opt<after<"when", conditions>>> {};

// ---- kinds and their like ----

struct role : p::sor<spaced_word<"part">, spaced_word<"fastener">, spaced_word<"connector">,
                     spaced_word<"bond">, spaced_word<"fluid">, spaced_word<"energy">> {};
struct kind : line<new_name, optional_title, spaced_word<"is">, role> {};
struct drive : line<new_name, optional_title> {};
struct form : line<new_name, optional_title> {};
struct thread : line<thread_name, optional_title> {};
struct grade_name : p::seq<describing_word, space> {};
struct grade : line<grade_name, optional_title> {};
struct friction : line<new_name, optional_title> {};
struct timing : line<new_name, optional_title> {};
struct tool_kind : line<new_name, optional_title> {};
struct gear : line<new_name, optional_title> {};
struct rating_part : line<rating, title> {};
struct sign : line<new_name, title> {};
struct hazard : line<new_name, title> {};

// ---- guides ----

struct guide : line<new_name, title> {};
struct section : line<> {};
struct step : line<new_name, optional_title> {};
struct test : line<new_name, optional_title> {};

} // namespace matchmark::grammar
