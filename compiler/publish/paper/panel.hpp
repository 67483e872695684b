// Panels on paper: safety messages with their signal words, framed and shaded passages.
#pragma once

#include "publish/paper/flow.hpp"

namespace matchmark::publish {

// A safety message; `after` stands below it, when it is not empty. Weight of line and the signal
// word, not colour, tell the signals apart. The document outlives the flow.
void add_panel(Flow& flow, const guide::Document& document, const guide::Message& message,
               const Rich& after = {});

// What follows stands on grey ground, up to the matching end.
struct Shade {
    std::size_t first = 0; // box
    double left = 0;
    double width = 0;
};
Shade begin_shade(Flow& flow);
void end_shade(Flow& flow, const Shade& shade);

// The document's sign of that name; null when it has none.
const guide::Sign* sign_of(const guide::Document& document, const std::string& name);

} // namespace matchmark::publish
