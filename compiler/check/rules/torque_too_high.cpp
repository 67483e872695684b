// A torque that would shear the fastener.
#include "check/torques.hpp"
#include "check/troubles.hpp"

#include "model/bolting.hpp"

#include <fmt/format.h>

namespace matchmark::check::rules {

namespace {

std::optional<double> breaks_at(const StatedTorque& stated) {
    if (stated.grade != nullptr)
        return model::breaking_torque(*stated.thread, *stated.grade);
    if (stated.thread->breaks_at)
        return stated.thread->breaks_at->base;
    return std::nullopt;
}

void find(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const StatedTorque& stated : stated_torques(walk)) {
        const auto breaking = breaks_at(stated);
        if (!breaking || stated.torque.base <= *breaking)
            continue;
        Diagnostic finding =
            torque_finding(walk, stated,
                           fmt::format("{} is past what {} bears", to_text(stated.torque),
                                       model::with_kind(walk.model, stated.item)));
        finding.label = "shears here";
        finding.why = fmt::format("{} breaks at {}", what_bears(walk, stated),
                                  to_text(torque_not_above(*breaking)));
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule torque_too_high;
const Rule torque_too_high{"torque-too-high", "torque", Severity::error,
                           "a torque past what the thread can bear", find};

} // namespace matchmark::check::rules
