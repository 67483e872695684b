// A tool or supply on the list that the guide never uses.
#include "check/driver_sizes.hpp"
#include "check/tightenings.hpp"
#include "check/troubles.hpp"

#include "model/fitting.hpp"

#include <fmt/core.h>
#include <set>

namespace matchmark::check::rules {

namespace {

using model::ResourceSort;

// Whatever is tightened to a torque takes a tool that can be set to it, named or not.
void add_torque_tools(const Walk& walk, const model::Quantity& torque,
                      std::set<std::uint32_t>& used) {
    for (std::uint32_t i = 0; i < walk.procedure.resources.size(); ++i) {
        if (model::sets_torque(walk.model, walk.procedure.resources[i], torque))
            used.insert(i);
    }
}

// What a missing line would use is missed by the finding about that line.
void add_missing(const Walk& walk, const std::vector<bench::Act>& acts,
                 std::set<std::uint32_t>& used) {
    const auto& list = walk.procedure.resources;
    for (const bench::Act& act : acts) {
        const model::Item& item = walk.model.item(act.item);
        const model::Verb& verb = walk.model.kind(item.kind).verbs[act.verb];
        for (const auto id : model::fitting_tools(walk.model, list, item, verb))
            used.insert(id.value);
        for (const auto id : model::serving(walk.model, list, act.item))
            used.insert(id.value);
        if (item.tightening->torque)
            add_torque_tools(walk, *item.tightening->torque, used);
    }
}

// Where a line says another torque than the device, the tool for the device's is not laid out for
// nothing.
void add_for_disputes(const Walk& walk, std::set<std::uint32_t>& used) {
    for (const Event& event : walk.events) {
        if (in_dispute(walk, event))
            add_torque_tools(walk, *walk.model.item(event.act->item).tightening->torque, used);
    }
}

// A driver in another size than the screws take is told at the screws.
void add_other_sizes(const Walk& walk, std::set<std::uint32_t>& used) {
    for (const Event& event : walk.events) {
        if (!event.act)
            continue;
        const model::Item& item = walk.model.item(event.act->item);
        const model::Verb& verb = walk.model.kind(item.kind).verbs[event.act->verb];
        if (const auto other = in_another_size(walk, item, verb, used))
            used.insert(other->value);
    }
}

void add_all_missing(const Walk& walk, std::set<std::uint32_t>& used) {
    for (const Trouble& trouble : walk.troubles)
        add_missing(walk, trouble.missing, used);
    for (const LeftOff& left : walk.left_off)
        add_missing(walk, left.acts, used);
}

void find_unused_resource(const Walk& walk, std::vector<Diagnostic>& findings) {
    auto ids = used_resources(walk);
    add_all_missing(walk, ids);
    add_for_disputes(walk, ids);
    if (ids.size() < walk.procedure.resources.size())
        add_other_sizes(walk, ids);
    std::set<double> torques;
    for (const model::Step& step : walk.procedure.steps) { // of all variants, not of this alone
        for (const model::Action& action : step.actions) {
            if (action.tightening->torque && torques.insert(action.tightening->torque->base).second)
                add_torque_tools(walk, *action.tightening->torque, ids);
        }
    }
    const std::size_t own = walk.guide().resources.size();
    for (std::uint32_t i = 0; i < own; ++i) {
        const model::Resource& resource = walk.procedure.resources[i];
        if (ids.count(i) != 0 || resource.sort == ResourceSort::spare)
            continue;
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
                           "a tool or supply on the list that no step uses", find_unused_resource};

} // namespace matchmark::check::rules
