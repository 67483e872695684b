// A driver with which a bench makes do, where another is the right one.
#include "check/troubles.hpp"

#include "model/fitting.hpp"
#include "model/spelling.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::ResourceId;

struct MadeDo {
    ResourceId tool;
    const model::StandIn* by = nullptr;
};

// The tool of the line that makes do; none when another of the line fits.
std::optional<MadeDo> made_do(const Walk& walk, const Event& event) {
    const model::Action& action = *walk.action(event);
    const model::Item& item = walk.model.item(event.act->item);
    const model::Verb& verb = walk.model.kind(item.kind).verbs[event.act->verb];
    std::optional<MadeDo> found;
    for (const ResourceId id : action.with) {
        const model::Resource& tool = walk.procedure.resources[id.value];
        if (model::tool_fits(walk.model, tool, item, verb))
            return std::nullopt;
        if (const auto* by = model::stand_in(walk.model, tool, item, verb); by != nullptr && !found)
            found = MadeDo{id, by};
    }
    return found;
}

std::string tool_words(const model::StandIn& by) {
    return by.tool_size.empty() ? model::spaced(by.tool)
                                : fmt::format("{} {}", model::spaced(by.tool), by.tool_size);
}

// "hexalobular driver 6": the first tool that the drive lists, with the size.
std::string right_tool(const Walk& walk, const model::Item& item) {
    for (const model::Drive& drive : walk.model.drives) {
        if (drive.name == item.bolt->drive && !drive.driven_by.empty())
            return fmt::format("{} {}", model::spaced(drive.driven_by.front()),
                               item.bolt->drive_size);
    }
    return fmt::format("{} driver {}", item.bolt->drive, item.bolt->drive_size);
}

void find_stand_in_driver(const Walk& walk, std::vector<Diagnostic>& findings) {
    std::vector<std::pair<model::ItemId, ResourceId>> reported;
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const Event& event = walk.events[at];
        const auto found = event.act ? made_do(walk, event) : std::nullopt;
        if (!found)
            continue;
        const std::pair pair{event.act->item, found->tool};
        if (std::find(reported.begin(), reported.end(), pair) != reported.end())
            continue;
        reported.push_back(pair);
        const model::Item& item = walk.model.item(event.act->item);
        const model::Resource& tool = walk.procedure.resources[found->tool.value];
        Diagnostic finding = finding_at(walk, at,
                                        fmt::format("`{}` only makes do for {}", tool.name,
                                                    model::with_kind(walk.model, event.act->item)));
        finding.label = "not the driver for it";
        finding.why = fmt::format("a {} makes do for {} {}, and slips sooner",
                                  tool_words(*found->by), item.bolt->drive, item.bolt->drive_size);
        finding.related.push_back({item.span, "declared here"});
        finding.related.push_back({tool.span, "the tool"});
        finding.help =
            fmt::format("list the driver for it: `tool driver \"{}\"`", right_tool(walk, item));
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule stand_in_driver;
const Rule stand_in_driver{"stand-in-driver", "tools", Severity::advice,
                           "a driver that makes do where another is the right one",
                           find_stand_in_driver};

} // namespace matchmark::check::rules
