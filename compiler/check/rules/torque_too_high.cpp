// A torque that would shear the fastener.
#include "check/torques.hpp"
#include "check/troubles.hpp"

#include "model/bolting.hpp"

#include <fmt/core.h>
#include <vector>

namespace matchmark::check::rules {

namespace {

// Of a fastener that this guide leaves alone: the next one will not.
void find_declared(const Walk& walk, const std::vector<StatedTorque>& used,
                   std::vector<Diagnostic>& findings) {
    std::vector<bool> met(walk.model.items.size());
    for (const StatedTorque& stated : used)
        met[stated.item.value] = true;
    for (std::uint32_t i = 0; i < walk.model.items.size(); ++i) {
        const model::Item& item = walk.model.items[i];
        const model::Thread* thread = model::thread_of(walk.model, item);
        if (met[i] || thread == nullptr || !item.tightening || !item.tightening->torque)
            continue;
        const StatedTorque stated{0, model::ItemId{i}, *item.tightening->torque, thread,
                                  model::grade_of(walk.model, item)};
        const auto breaking = breaks_at(stated);
        if (!breaking || stated.torque.base <= *breaking)
            continue;
        Diagnostic finding;
        finding.message = fmt::format("{} is past what {} bears", to_text(stated.torque),
                                      model::with_kind(walk.model, stated.item));
        finding.primary = item.tightening->span;
        finding.label = "would shear";
        finding.why = fmt::format("{} breaks at {}", what_bears(walk, stated),
                                  to_text(torque_not_above(*breaking)));
        finding.help = "look the torque up again, and its unit";
        findings.push_back(std::move(finding));
    }
}

void find_torque_too_high(const Walk& walk, std::vector<Diagnostic>& findings) {
    const auto used = stated_torques(walk);
    find_declared(walk, used, findings);
    for (const StatedTorque& stated : used) {
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
                           "a torque past what the thread can bear", find_torque_too_high};

} // namespace matchmark::check::rules
