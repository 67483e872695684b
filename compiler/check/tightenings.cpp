// Reads from a walk what is tightened.
#include "check/tightenings.hpp"

#include <cmath>
#include <map>

namespace matchmark::check {

bool makes_fast(const Walk& walk, const Event& event) {
    if (!event.act)
        return false;
    const model::Kind& kind = walk.model.kind_of(event.act->item);
    const model::Verb& verb = kind.verbs[event.act->verb];
    return kind.set_of[verb.to] == 0 && verb.to == kind.set_first.front();
}

namespace {

// A torque worked out from a preload, or brought over from pounds, is rounded: our own rule.
constexpr double rounded = 0.05;

} // namespace

bool in_dispute(const Walk& walk, const Event& event) {
    if (!makes_fast(walk, event))
        return false;
    const auto& said = walk.action(event)->tightening->torque;
    const auto& declared = walk.model.item(event.act->item).tightening->torque;
    return said && declared && std::abs(said->base - declared->base) > rounded * declared->base;
}

std::vector<TorqueUse> torques_used(const Walk& walk) {
    std::map<double, TorqueUse> by_value;
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        if (!makes_fast(walk, walk.events[at]) || in_dispute(walk, walk.events[at]))
            continue;
        if (const auto& torque = walk.action(walk.events[at])->tightening->torque)
            by_value.try_emplace(torque->base, TorqueUse{*torque, at});
    }
    std::vector<TorqueUse> uses;
    for (const auto& [value, use] : by_value)
        uses.push_back(use);
    return uses;
}

} // namespace matchmark::check
