// Reads the small things of a line: quantities, limits, references, conditions.
#pragma once

#include "resolve/context.hpp"

#include <functional>

namespace matchmark::resolve {

// A number with its unit, or a sum of such; reports an unknown unit or mixed measures. Nothing
// then, or if none stands here.
std::optional<model::Quantity> read_quantity(Context& context, syntax::Reader& reader);
// The same, and it must measure this; `what` names it for the message: "a torque".
std::optional<model::Quantity> read_quantity(Context& context, syntax::Reader& reader,
                                             model::Measure measure);
// `at least Q`, `at most Q`, `below Q`, `above Q`, `1..2 mm`; nothing when none stands here.
std::optional<model::Limit> read_limit(Context& context, syntax::Reader& reader);
double read_number(syntax::Reader& reader);

// Items by name, with members; unknown ones are reported and left out. `alias` may give an item for
// a name that is none.
// What numbers behind a name may be: `5,5`, without a space, is a place where one may follow.
enum class Numbers : unsigned char { members, members_or_place };
using Alias = std::function<std::optional<model::ItemId>(std::string_view)>;
std::vector<model::ItemRef> read_refs(Context& context, syntax::Reader& reader,
                                      const Alias* alias = nullptr);
std::optional<model::ItemRef> read_ref(Context& context, syntax::Reader& reader,
                                       const Alias* alias = nullptr,
                                       Numbers numbers = Numbers::members);
std::vector<model::ItemId> read_items(Context& context, syntax::Reader& reader);
std::vector<model::Condition> read_conditions(Context& context, syntax::Reader& reader);
std::optional<model::Condition> read_condition(Context& context, syntax::Reader& reader);
// The state of the item's kind that is called so; if there is none, that is reported.
std::optional<model::StateId> state_called(Context& context, model::ItemId item, Span name);
std::vector<Span> read_name_list(syntax::Reader& reader);
std::vector<model::Point> read_points(syntax::Reader& reader);
model::VariantMask read_variants(Context& context, syntax::Reader& reader);
// A torque with its pattern and passes.
void read_tightening_rest(Context& context, syntax::Reader& reader, model::Tightening& tightening);

} // namespace matchmark::resolve
