// A joint of pipes that is opened, and no fluid or pressure is known to stand behind it.
#include "check/troubles.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <map>

namespace matchmark::check::rules {

namespace {

using model::ItemId;

bool opens_joint(const Walk& walk, const bench::Act& act) {
    const model::Item& joint = walk.model.item(act.item);
    const model::Kind& kind = walk.model.kind(joint.kind);
    return joint.role == model::Role::connector && kind.lets_out && !joint.lets_nothing_out &&
           !joint.touches.empty() && // a slip of the device, which joins nothing
           !kind.needs_license && model::lets_go(kind, kind.verbs[act.verb]);
}

// Has any fluid, or energy that runs out, to be let out first?
bool is_known(const model::Model& model, const model::Item& joint) {
    return std::any_of(joint.needs.begin(), joint.needs.end(), [&](const model::Need& need) {
        const model::Role role = model.item(need.condition.item.item).role;
        return role == model::Role::fluid || role == model::Role::energy;
    });
}

// The joint on a hose is told once, for the other end has the same behind it.
bool is_told(const Walk& walk, const std::vector<ItemId>& told, const model::Item& joint) {
    return std::any_of(told.begin(), told.end(), [&](ItemId other) {
        const auto& parts = walk.model.item(other).touches;
        return std::any_of(parts.begin(), parts.end(),
                           [&](ItemId part) { return among(joint.touches, part); });
    });
}

// Where each joint of that sort is first opened; by item, so that a line which is moved changes
// nothing.
std::map<std::uint32_t, std::size_t> opened(const Walk& walk) {
    std::map<std::uint32_t, std::size_t> at_event;
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const auto& act = walk.events[at].act;
        if (act && opens_joint(walk, *act) && !is_known(walk.model, walk.model.item(act->item)))
            at_event.emplace(act->item.value, at);
    }
    return at_event;
}

void find_nothing_behind(const Walk& walk, std::vector<Diagnostic>& findings) {
    std::vector<ItemId> told;
    for (const auto& [item, at] : opened(walk)) {
        const ItemId id{item};
        const model::Item& joint = walk.model.item(id);
        if (is_told(walk, told, joint))
            continue;
        told.push_back(id);
        Diagnostic finding =
            finding_at(walk, at,
                       fmt::format("no fluid and no pressure is declared behind {}",
                                   model::with_kind(walk.model, id)));
        finding.label = "opened with what is in it";
        finding.related.push_back({joint.span, "declared here"});
        finding.why = "what nobody declares is not let out first, nor filled in again";
        finding.help =
            fmt::format("declare it, as `fluid oil \"oil\" in {} kind hydraulic-oil` does, or say "
                        "`lets nothing out` of `{}`",
                        walk.model.item(joint.touches.back()).name, joint.name);
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule nothing_behind;
const Rule nothing_behind{"nothing-behind", "needs", Severity::warning,
                          "a pipe joint opened, behind which no fluid and no pressure is declared",
                          find_nothing_behind};

} // namespace matchmark::check::rules
