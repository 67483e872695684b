// A tool that does not fit what it is used on.
#include "check/driver_sizes.hpp"
#include "check/troubles.hpp"

#include "model/fitting.hpp"
#include "model/spelling.hpp"

#include <algorithm>
#include <fmt/core.h>
#include <set>

namespace matchmark::check::rules {

namespace {

using model::ResourceId;
using model::ResourceSort;

std::string wanted(const Walk& walk, const model::Item& item, const model::Verb& verb) {
    std::vector<std::string> words;
    if (verb.by_driver) {
        words.push_back(
            item.bolt->drive.empty()
                ? "a driver"
                : fmt::format("a driver for {} {}", item.bolt->drive, item.bolt->drive_size));
        while (!words.back().empty() && words.back().back() == ' ')
            words.back().pop_back();
    }
    for (const auto& tool : verb.tools)
        words.push_back("`" + model::sized_tool(walk.model, item, tool) + "`");
    if (verb.by_hand)
        words.emplace_back("a hand");
    return model::list(words, "or");
}

bool is_tool(const Walk& walk, ResourceId id) {
    return walk.procedure.resources[id.value].sort == ResourceSort::tool;
}

// It was most likely listed for these screws; or it is one more.
void mend_size(const Walk& walk, ResourceId id, const std::string& wanted_tool,
               Diagnostic& finding) {
    const model::Resource& tool = walk.procedure.resources[id.value];
    const std::string line = walk.sources.file(tool.line.file)
                                 .text.substr(tool.line.begin, tool.line.end - tool.line.begin);
    const std::size_t at = line.find(tool.text);
    finding.related.push_back({tool.span, "listed in another size"});
    if (at == std::string::npos)
        return;
    const auto begin = tool.line.begin + static_cast<std::uint32_t>(at);
    const auto end = begin + static_cast<std::uint32_t>(tool.text.size());
    finding.edits = {{{tool.line.file, begin, end}, wanted_tool}};
    finding.safe = false;
    finding.help = "list it in the size that they take";
}

// A tool that the verb names and no other: a voltage tester.
void list_tool(const Walk& walk, const std::string& tool, Diagnostic& finding) {
    std::string title = model::spaced(tool);
    for (const model::ToolKind& kind : walk.model.tool_kinds) {
        if (kind.name == tool)
            title = kind.title;
    }
    finding.edits = {add_tool(walk, free_resource_name(walk, tool), title)};
    finding.help = "list it in the guide's head";
}

void report_wrong_driver(const Walk& walk, std::size_t at, const model::Item& item,
                         const model::Verb& verb, std::vector<Diagnostic>& findings) {
    const model::Action& action = *walk.action(walk.events[at]);
    const auto named = std::find_if(action.with.begin(), action.with.end(),
                                    [&](ResourceId id) { return is_tool(walk, id); });
    const auto fitting = model::fitting_tools(walk.model, walk.procedure.resources, item, verb);
    const bool none = named == action.with.end();
    if (none && !model::asks_tool(verb))
        return;
    Diagnostic finding = finding_at(
        walk, at,
        none ? fmt::format("no tool is named to {} {}", verb.name,
                           model::with_kind(walk.model, walk.events[at].act->item))
             : fmt::format("`{}` does not fit {}", walk.procedure.resources[named->value].name,
                           model::with_kind(walk.model, walk.events[at].act->item)));
    finding.why = fmt::format("it takes {}", wanted(walk, item, verb));
    finding.label = none ? "with what?" : "wrong tool";
    finding.related.push_back({item.span, "declared here"});
    if (!none)
        finding.related.push_back({walk.procedure.resources[named->value].span, "the tool"});
    if (fitting.empty()) {
        const std::string size = item.bolt->drive_size.empty() ? "" : " " + item.bolt->drive_size;
        finding.help =
            verb.by_driver && !item.bolt->drive.empty()
                ? fmt::format("list one: `tool driver \"{}{}\"`", driver_for(walk, item), size)
                : "list such a tool in the guide's head";
        if (const auto other = in_another_size(walk, item, verb, used_resources(walk)))
            mend_size(walk, *other, driver_for(walk, item) + size, finding);
        if (verb.by_driver && !item.bolt->drive.empty())
            return findings.push_back(std::move(finding));
        if (none && verb.tools.size() == 1)
            list_tool(walk, verb.tools.front(), finding);
    } else if (none && !action.derived && action.targets.size() == 1) {
        const Span target = action.targets.front().ref.span;
        finding.help = "name the tool";
        const std::string& tool = walk.procedure.resources[fitting.front().value].name;
        finding.edits = {{{target.file, target.end, target.end}, " with " + tool}};
    } else {
        finding.help =
            fmt::format("use `{}`", walk.procedure.resources[fitting.front().value].name);
    }
    findings.push_back(std::move(finding));
}

void find_wrong_driver(const Walk& walk, std::vector<Diagnostic>& findings) {
    std::vector<model::ItemId> reported;
    std::set<std::string> lacking; // what the list lacks is told where it is wanted first
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const Event& event = walk.events[at];
        if (!event.act)
            continue;
        const model::Action& action = *walk.action(event);
        const model::Item& item = walk.model.item(event.act->item);
        const model::Verb& verb = walk.model.kind(item.kind).verbs[event.act->verb];
        if (!model::asks_tool(verb) && verb.tools.empty())
            continue;
        const bool any_named = std::any_of(action.with.begin(), action.with.end(),
                                           [&](ResourceId id) { return is_tool(walk, id); });
        const bool fits = std::any_of(action.with.begin(), action.with.end(), [&](ResourceId id) {
            const model::Resource& tool = walk.procedure.resources[id.value];
            return model::tool_fits(walk.model, tool, item, verb) ||
                   model::stand_in(walk.model, tool, item, verb) != nullptr;
        });
        if (fits || (!any_named && !model::asks_tool(verb)))
            continue;
        // The derived way back has the tool of the way out: one finding is enough.
        if (action.derived &&
            std::find(reported.begin(), reported.end(), event.act->item) != reported.end())
            continue;
        const bool lacks =
            !any_named && verb.by_driver && !item.bolt->drive.empty() &&
            model::fitting_tools(walk.model, walk.procedure.resources, item, verb).empty();
        if (lacks && !lacking.insert(item.bolt->drive + " " + item.bolt->drive_size).second)
            continue;
        reported.push_back(event.act->item);
        report_wrong_driver(walk, at, item, verb, findings);
    }
}

} // namespace

extern const Rule wrong_driver;
const Rule wrong_driver{
    "wrong-driver", "tools", Severity::error,
    "a tool that does not fit the drive or the verb, or no tool where one is needed",
    find_wrong_driver};

} // namespace matchmark::check::rules
