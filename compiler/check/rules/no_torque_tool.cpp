// Fasteners tightened to a torque, with no tool on the list that can be set to it.
#include "check/tightenings.hpp"
#include "check/troubles.hpp"
#include "model/fitting.hpp"

#include <algorithm>
#include <fmt/core.h>
#include <vector>

namespace matchmark::check::rules {

namespace {

// What one tool that is missing would tighten, the greatest torque first.
struct Missing {
    const model::ToolKind* tool = nullptr;
    std::vector<TorqueUse> uses;
};

// Goes from the greatest torque down, so that a wrench that is needed serves for what a driver
// could tighten too.
std::vector<Missing> missing_tools(const Walk& walk) {
    std::vector<Missing> missing;
    std::vector<TorqueUse> uses = torques_used(walk);
    for (auto use = uses.rbegin(); use != uses.rend(); ++use) {
        const auto& list = walk.procedure.resources;
        const bool there = std::any_of(list.begin(), list.end(), [&](const auto& listed) {
            return model::sets_torque(walk.model, listed, use->torque);
        });
        if (there)
            continue;
        const bool same = !missing.empty() && model::reaches(*missing.back().tool, use->torque);
        const model::ToolKind* tool =
            same ? missing.back().tool : model::torque_tool_for(walk.model, use->torque);
        if (tool == nullptr)
            continue;
        if (!same)
            missing.push_back({tool, {}});
        missing.back().uses.push_back(*use);
    }
    return missing;
}

Diagnostic tool_missing(const Walk& walk, const Missing& missing) {
    const TorqueUse& greatest = missing.uses.front();
    const TorqueUse& least = missing.uses.back();
    const model::ItemId id = walk.events[greatest.first_event].act->item;
    Diagnostic finding =
        finding_at(walk, greatest.first_event,
                   fmt::format("{} tightened to {}, and no tool on the list can be set to that",
                               item_is(walk, id), model::to_text(greatest.torque)));
    finding.label = "by what?";
    finding.why = "a hand feels no torque";
    finding.related.push_back({walk.model.item(id).span, "declared here"});
    finding.help = "add it to the guide's tools, with the range that this guide asks for";
    const std::string range = missing.uses.size() == 1
                                  ? model::for_reader(greatest.torque)
                                  : model::for_reader({least.torque, greatest.torque, false});
    finding.edits = {add_tool(walk, free_resource_name(walk, missing.tool->name),
                              missing.tool->title + " " + range)};
    return finding;
}

void find_no_torque_tool(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const Missing& missing : missing_tools(walk))
        findings.push_back(tool_missing(walk, missing));
}

} // namespace

extern const Rule no_torque_tool;
const Rule no_torque_tool{"no-torque-tool", "tools", Severity::advice,
                          "fasteners tightened to a torque, with no tool on the list that can be "
                          "set to it",
                          find_no_torque_tool};

} // namespace matchmark::check::rules
