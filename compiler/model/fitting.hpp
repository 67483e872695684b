// Which of a guide's tools, spares and supplies serves which item.
#pragma once

#include "model/model.hpp"

#include <optional>
#include <vector>

namespace matchmark::model {

// Does the tool do this verb on this item: by its description's words, and the item's drive and
// size?
bool tool_fits(const Model& model, const Resource& tool, const Item& item, const Verb& verb);
// The line of the item's drive by which the tool makes do where none that fits is at hand; null
// when there is none.
const StandIn* stand_in(const Model& model, const Resource& tool, const Item& item,
                        const Verb& verb);
// What the guide says of the tool, or else its tool-kind: the one that its description names with
// the most words.
std::optional<ToolClass> class_of(const Model& model, const Resource& tool);
// Can tools of the kind be set to the torque?
bool reaches(const ToolKind& kind, const Quantity& torque);
// Can the tool be set to the torque, as far as its description says ("8 to 180 N·m"), and the
// tool-kinds that it names?
bool sets_torque(const Model& model, const Resource& tool, const Quantity& torque);
// Is it, by its name and description, a tool that measures with a current of its own: an insulation
// tester?
bool measures_dead_circuits(const Model& model, const Resource& tool);
// The first tool-kind that can be set to it; null when the library knows of none.
const ToolKind* torque_tool_for(const Model& model, const Quantity& torque);
// The tool that a verb names, with the size of the item's head where its drive asks for one.
std::string sized_tool(const Model& model, const Item& item, const std::string& tool);
// Is it a driver, or what is set to a torque?
bool works_fasteners(const Model& model, const Resource& tool);
// Does the verb ask for a tool to be named?
bool asks_tool(const Verb& verb);
// Is the spare or supply meant for this item: by `for`, else by the words of its description?
bool serves(const Model& model, const Resource& resource, ItemId item);
// The listed tools that fit (or else those that make do), and the supplies or spares that serve, in
// the order listed.
std::vector<ResourceId> fitting_tools(const Model& model, const std::vector<Resource>& list,
                                      const Item& item, const Verb& verb);
std::vector<ResourceId> serving(const Model& model, const std::vector<Resource>& list, ItemId item);
// An action complete as the compiler writes it: the tool that fits, the torque declared, the supply
// that renews.
Action written_action(const Model& model, const std::vector<Resource>& list, ItemRef ref,
                      std::uint16_t verb, bool renew);

} // namespace matchmark::model
