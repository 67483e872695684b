// What was meant by a line of a step that is no action.
#pragma once

#include "parse/meant.hpp"

namespace matchmark::syntax {

// `remove the lid`, `take off lid`, `undo screws using driver`, `fasten nut 4 N.m`, two actions in
// one line, and whole sentences. `found`: what stands at the slip. False where the line is not of
// such a sort.
bool meant_action(Diagnostic& finding, const Scene& scene, const Misread& misread, Span found);

} // namespace matchmark::syntax
