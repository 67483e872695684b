// A fastener turned with a tool of the list, though nobody says what drive it has.
#include "check/troubles.hpp"

#include "model/fitting.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::ResourceId;

// The tool, when only the item's drive could say whether it fits.
const model::Resource* untold(const Walk& walk, const Event& event) {
    const model::Action& action = *walk.action(event);
    const model::Item& item = walk.model.item(event.act->item);
    model::Verb verb = walk.model.kind(item.kind).verbs[event.act->verb];
    if (!verb.by_driver || !item.bolt->drive.empty() || action.derived)
        return nullptr;
    verb.by_driver = false; // does a tool fit by the verb's own list?
    const model::Resource* named = nullptr;
    for (const ResourceId id : action.with) {
        const model::Resource& tool = walk.procedure.resources[id.value];
        if (tool.sort != model::ResourceSort::tool)
            continue;
        if (!verb.tools.empty() && model::tool_fits(walk.model, tool, item, verb))
            return nullptr;
        named = named == nullptr ? &tool : named;
    }
    return named;
}

void find_no_drive(const Walk& walk, std::vector<Diagnostic>& findings) {
    std::vector<model::ItemId> reported;
    for (const Event& event : walk.events) {
        const model::Resource* tool = event.act ? untold(walk, event) : nullptr;
        if (tool == nullptr)
            continue;
        const model::ItemId id = event.act->item;
        if (std::find(reported.begin(), reported.end(), id) != reported.end())
            continue;
        reported.push_back(id);
        Diagnostic finding;
        finding.message =
            fmt::format("no drive is declared for {}", model::with_kind(walk.model, id));
        finding.primary = walk.model.item(id).span;
        finding.label = "any tool would do";
        finding.related.push_back({walk.action(event)->head, "turned with `" + tool->name + "`"});
        finding.why = fmt::format("whether `{}` fits cannot be checked", tool->name);
        finding.help =
            "add the drive and its size, such as `hexagon-head 13`; `matchmark kinds drives` "
            "lists them";
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule no_drive;
const Rule no_drive{"no-drive", "tools", Severity::advice,
                    "a fastener turned with a tool of the list, and declared without a drive",
                    find_no_drive};

} // namespace matchmark::check::rules
