// What is renewed with what is bought for another.
#include "check/troubles.hpp"

#include <fmt/core.h>
#include <optional>

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

// Of a spare that says not what it is for: the other item that its description names in full, with
// no more than a size behind. "Front lamp bulb" is no front lamp.
std::optional<ItemId> described_as(const Walk& walk, const Resource& spare, ItemId item) {
    const auto names = [&](const model::Item& one) {
        const std::string_view text = spare.text;
        if (one.title.find(' ') == std::string::npos || !text.starts_with(one.title))
            return false;
        const auto rest = text.substr(one.title.size());
        const auto next = rest.find_first_not_of(' ');
        return rest.empty() || rest[0] == ',' ||
               (rest[0] == ' ' && next != rest.npos && rest[next] >= '0' && rest[next] <= '9');
    };
    if (model::has_words(spare.text, walk.model.item(item).title))
        return std::nullopt;
    for (std::uint32_t i = 0; i < walk.model.items.size(); ++i) {
        if (ItemId{i} != item && names(walk.model.items[i]))
            return ItemId{i};
    }
    return std::nullopt;
}

// Nothing when it may be the right one.
std::string what_it_is(const Walk& walk, const Resource& resource, ItemId item) {
    if (resource.sort != ResourceSort::spare)
        return resource.sort == ResourceSort::tool ? "is a tool" : "is a supply, and used up";
    const auto& meant = resource.for_items;
    const auto other = meant.empty() ? described_as(walk, resource, item) : std::nullopt;
    if (other)
        return "is described as " + model::quoted(walk.model, *other);
    if (meant.empty() || among(meant, item))
        return {};
    return "is for " + model::list(served(walk, resource));
}

// A new seal, a fluid, a screw: what the list has for others alone does not renew it.
void find_laid_with_another(const Walk& walk, std::size_t at, const model::Action& action,
                            std::vector<Diagnostic>& findings) {
    const auto for_another = [&](model::ResourceId id) {
        const Resource& resource = walk.procedure.resources[id.value];
        return resource.sort != ResourceSort::tool && !resource.for_items.empty() &&
               std::none_of(action.targets.begin(), action.targets.end(), [&](const auto& target) {
                   return among(resource.for_items, target.ref.item);
               });
    };
    const auto found = std::find_if(action.with.begin(), action.with.end(), for_another);
    if (found == action.with.end() || action.derived ||
        walk.events[at].act->item != action.targets.front().ref.item)
        return;
    const Resource& resource = walk.procedure.resources[found->value];
    const ItemId item = walk.events[at].act->item;
    Diagnostic finding = finding_at(walk, at,
                                    fmt::format("`{}` goes to {}, and is for {}", resource.name,
                                                model::with_kind(walk.model, item),
                                                model::list(served(walk, resource))));
    finding.label = "not what is for it";
    finding.why = "whoever buys by the list lays the wrong one";
    finding.related.push_back({resource.span, "listed here"});
    finding.help = fmt::format("name what is for {}, or name it too on the list, after `for`",
                               model::quoted(walk.model, item));
    findings.push_back(std::move(finding));
}

void find_wrong_spare(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const model::Action* action = walk.action(walk.events[at]);
        if (action == nullptr || action->with.empty())
            continue;
        if (walk.events[at].act && action->sort == model::ActionSort::verb)
            find_laid_with_another(walk, at, *action, findings);
        if (action->sort != model::ActionSort::replace)
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
                       "a part or fluid renewed with what is listed for another, or is no spare",
                       find_wrong_spare};

} // namespace matchmark::check::rules
