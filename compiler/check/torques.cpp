// Gathers the torques of a walk.
#include "check/torques.hpp"

#include "check/mending.hpp"
#include "check/tightenings.hpp"
#include "model/bolting.hpp"

#include <cmath>
#include <fmt/core.h>

namespace matchmark::check {

std::vector<StatedTorque> stated_torques(const Walk& walk) {
    std::vector<StatedTorque> all;
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const Event& event = walk.events[at];
        if (!event.act || in_dispute(walk, event))
            continue;
        const auto& torque = walk.action(event)->tightening->torque;
        const model::Item& item = walk.model.item(event.act->item);
        const model::Thread* thread = model::thread_of(walk.model, item);
        if (!torque || torque->measure != model::Measure::torque || thread == nullptr)
            continue;
        all.push_back({at, event.act->item, *torque, thread, model::grade_of(walk.model, item)});
    }
    return all;
}

std::optional<double> breaks_at(const StatedTorque& stated) {
    if (stated.grade != nullptr)
        return model::breaking_torque(*stated.thread, *stated.grade);
    if (stated.thread->breaks_at)
        return stated.thread->breaks_at->base;
    return std::nullopt;
}

std::string what_bears(const Walk& walk, const StatedTorque& stated) {
    if (stated.grade == nullptr)
        return "thread " + stated.thread->name;
    std::string words = fmt::format("thread {} in {}", stated.thread->name, stated.grade->name);
    if (walk.model.item(stated.item).bolt->grade.empty())
        words += " (taken as that, since no grade is named)";
    return words;
}

namespace {

model::Quantity two_figures(double newton_metres, double (*round)(double)) {
    if (newton_metres <= 0)
        return {0, model::Unit("N.m"), model::Measure::torque, 0};
    const double scale = std::pow(10.0, 1 - std::floor(std::log10(newton_metres)));
    const double rounded = round(newton_metres * scale) / scale;
    return {rounded, model::Unit("N.m"), model::Measure::torque, rounded};
}

} // namespace

model::Quantity torque_shown(double newton_metres) {
    return two_figures(newton_metres, [](double value) { return std::round(value); });
}

model::Quantity torque_not_above(double newton_metres) {
    constexpr double binary_noise = 1e-9;
    return two_figures(newton_metres,
                       [](double value) { return std::floor(value + binary_noise); });
}

Diagnostic torque_finding(const Walk& walk, const StatedTorque& stated, std::string message) {
    const model::Item& item = walk.model.item(stated.item);
    Diagnostic finding = finding_at(walk, stated.event, std::move(message));
    const bool declared = item.tightening && item.tightening->torque;
    finding.related.push_back({declared ? item.tightening->span : item.span, "declared here"});
    finding.help = "look the torque up again, and its unit";
    return finding;
}

} // namespace matchmark::check
