// A tool, spare or supply on the list that the guide never uses.
#include "check/troubles.hpp"

#include <fmt/format.h>
#include <set>

namespace matchmark::check::rules {

namespace {

using model::ResourceSort;

std::set<std::uint32_t> used(const Walk& walk) {
    std::set<std::uint32_t> ids;
    const auto take = [&](const std::vector<model::ResourceId>& list) {
        for (const auto id : list)
            ids.insert(id.value);
    };
    for (const model::Step& step : walk.procedure.steps) {
        take(step.with);
        for (const model::Action& action : step.actions) {
            take(action.with);
            take(action.otherwise_with);
        }
    }
    // A spare named in a goal is missed there.
    for (const model::Action& goal : walk.guide().goals)
        take(goal.with);
    return ids;
}

void find(const Walk& walk, std::vector<Diagnostic>& findings) {
    const auto ids = used(walk);
    const std::size_t own = walk.guide().resources.size();
    for (std::uint32_t i = 0; i < own; ++i) {
        const model::Resource& resource = walk.procedure.resources[i];
        if (ids.count(i) != 0)
            continue;
        // A supply may be used up in a job of its own: it is missed only when it is for an item
        // that is renewed.
        const bool tool = resource.sort == ResourceSort::tool;
        Diagnostic finding;
        finding.message = fmt::format("`{}` is on the list and never used", resource.name);
        finding.primary = resource.span;
        finding.label = tool ? "laid out for nothing" : "bought for nothing";
        finding.why = "either a step forgets it, or the reader need not have it";
        finding.help = "name it in a step with `with`, or take it off the list";
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule unused_resource;
const Rule unused_resource{"unused-resource", "tools", Severity::warning,
                           "a tool, spare or supply on the list that no step uses", find};

} // namespace matchmark::check::rules
