// Reads one action: a verb, what it is done to, and with what, how tight, how long.
#pragma once

#include "resolve/values.hpp"

namespace matchmark::resolve {

struct ActionPlace {
    Context& context;
    const model::Guide& guide; // for its resources
    Alias alias;               // a spare's name stands for the item that it renews
};

// `replace`, `measure` and the like: what the compiler itself knows how to do, whatever the kind.
bool is_own_verb(std::string_view verb);

// The reader stands after the verb. Nothing when no item of it could be found.
std::optional<model::Action> read_action(ActionPlace& place, syntax::Reader& reader, Span verb,
                                         Span line);
// The tools, spares and supplies named from here on.
std::vector<model::ResourceId> read_resources(ActionPlace& place, syntax::Reader& reader);

} // namespace matchmark::resolve
