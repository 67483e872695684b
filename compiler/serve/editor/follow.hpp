// Follows a name: to where it is declared, to all its uses, and to another name everywhere.
#pragma once

#include "serve/editor/names.hpp"
#include "serve/editor/workspace.hpp"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace matchmark::serve {

// The name at a place of a file that is open.
struct Followed {
    NameUse use;
    std::string text;
};
std::optional<Followed> followed(Workspace& workspace, const std::string& path, Position position);

// Where it is declared; empty when that is in the parts library, which is no file.
std::vector<Location> declarations(Workspace& workspace, const std::string& path,
                                   const Followed& name);
// All its uses, in every file that sees its declaration: those that are open, and those in the
// editor's folders.
std::vector<Location> uses(Workspace& workspace, const std::string& path, const Followed& name,
                           bool with_declaration);

// Why the name cannot be changed; nothing when it can.
std::optional<Problem> why_not_renamed(Workspace& workspace, const std::string& path,
                                       const Followed& name);
// Its new name everywhere; or why that will not do: it is no name, or means something else there.
std::variant<WorkspaceEdit, Problem> renamed(Workspace& workspace, const std::string& path,
                                             const Followed& name, const std::string& new_name);

} // namespace matchmark::serve
