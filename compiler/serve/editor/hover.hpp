// What is shown about a name when an author rests on it, and the states beside each line.
#pragma once

#include "serve/editor/workspace.hpp"

#include <optional>
#include <vector>

namespace matchmark::serve {

std::optional<Hover> hover(Workspace& workspace, const std::string& path, Position position);

// Behind each action of these lines, how what it was done to stands after it.
std::vector<InlayHint> state_hints(Workspace& workspace, const std::string& path, Range range);

} // namespace matchmark::serve
