// Counts the steps of an order of acts.
#include "appraise/steps.hpp"

#include "appraise/steps_of_acts.hpp"

namespace matchmark::appraise {

using model::Role;

std::optional<StepEnd> ends_step(const model::Model& model, const OrderedAct& act) {
    const model::Item& item = model.item(act.act.item);
    const model::Kind& kind = model.kind(item.kind);
    const model::StateId to = kind.verbs[act.act.verb].to;
    switch (item.role) {
    case Role::part:
        if (kind.set_of[to] == 0 && model::contains(kind.present, act.from) &&
            !model::contains(kind.present, to))
            return StepEnd::part_off;
        return std::nullopt;
    case Role::bond:
        return StepEnd::bond;
    case Role::energy:
        return StepEnd::supply;
    case Role::fluid:
        return StepEnd::drained;
    case Role::fastener:
    case Role::connector:
        break;
    }
    return std::nullopt;
}

bool is_preparation(const model::Model& model, const OrderedAct& act) {
    const model::Item& item = model.item(act.act.item);
    const model::Kind& kind = model.kind(item.kind);
    const model::Verb& verb = kind.verbs[act.act.verb];
    return item.role == Role::part && kind.set_of[verb.to] != 0 && verb.from_outside;
}

std::vector<Step> count_steps(const model::Model& model, const std::vector<OrderedAct>& acts) {
    std::vector<Step> steps;
    Step open;
    std::string used; // the tool of the open step
    const auto end = [&](StepEnd why) {
        open.end = why;
        steps.push_back(std::move(open));
        open = {};
        used.clear();
    };
    for (std::size_t i = 0; i < acts.size(); ++i) {
        if (is_preparation(model, acts[i]))
            continue;
        const std::string& tool = acts[i].tool;
        if (!tool.empty() && !used.empty() && tool != used)
            end(StepEnd::tool_changed);
        if (!tool.empty())
            used = tool;
        open.acts.push_back(i);
        if (const auto why = ends_step(model, acts[i]))
            end(*why);
    }
    if (!open.acts.empty())
        end(StepEnd::at_last);
    return steps;
}

} // namespace matchmark::appraise
