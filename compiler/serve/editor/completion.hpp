// What may be written next: the words of the language that stand here, and what the bench allows.
#pragma once

#include "serve/editor/workspace.hpp"

#include <vector>

namespace matchmark::serve {

// What is offered at a place. After a verb, first the items on which it can be done now; below them
// the others, each with the reason why not yet.
std::vector<Completion> completions(Workspace& workspace, const std::string& path,
                                    Position position);

} // namespace matchmark::serve
