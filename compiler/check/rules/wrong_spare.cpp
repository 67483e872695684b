// A part renewed by what is bought for another.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::ItemId;
using model::Resource;
using model::ResourceSort;

std::vector<std::string> served(const Walk& walk, const Resource& resource) {
    std::vector<std::string> names;
    for (const ItemId item : resource.for_items)
        names.push_back(model::quoted(walk.model, item));
    return names;
}

// Nothing when it may be the right one.
std::string what_it_is(const Walk& walk, const Resource& resource, ItemId item) {
    if (resource.sort != ResourceSort::spare)
        return resource.sort == ResourceSort::tool ? "is a tool" : "is a supply, and used up";
    const auto& meant = resource.for_items;
    if (meant.empty() || among(meant, item))
        return {};
    return "is for " + model::list(served(walk, resource));
}

void find_wrong_spare(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const model::Action* action = walk.action(walk.events[at]);
        if (action == nullptr || action->sort != model::ActionSort::replace || action->with.empty())
            continue;
        const Resource& resource = walk.procedure.resources[action->with.front().value];
        for (const model::Target& target : action->targets) {
            const ItemId item = target.ref.item;
            const std::string is = what_it_is(walk, resource, item);
            if (!walk.bench.exists(item) || is.empty())
                continue;
            Diagnostic finding =
                finding_at(walk, at,
                           fmt::format("{} is replaced with `{}`, which {}",
                                       model::with_kind(walk.model, item), resource.name, is));
            finding.label = "not the part for it";
            finding.why = "whoever buys by the list has no new one";
            finding.related.push_back({resource.span, "listed here"});
            finding.help = fmt::format("list a `spare` for {}", model::quoted(walk.model, item));
            findings.push_back(std::move(finding));
        }
    }
}

} // namespace

extern const Rule wrong_spare;
const Rule wrong_spare{"wrong-spare", "goal", Severity::error,
                       "a part replaced with what is listed for another, or is no spare",
                       find_wrong_spare};

} // namespace matchmark::check::rules
