// A guide's torque that is not the one that the device declares for the same fastener.
#include "check/tightenings.hpp"
#include "check/troubles.hpp"

#include <cmath>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// A torque worked out from a preload, or brought over from pounds, is rounded: our own rule.
constexpr double rounded = 0.05;

void find_other_torque(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        if (!makes_fast(walk, walk.events[at]))
            continue;
        const model::Item& item = walk.model.item(walk.events[at].act->item);
        const auto& said = walk.action(walk.events[at])->tightening->torque;
        const auto& declared = item.tightening->torque;
        if (!said || !declared || std::abs(said->base - declared->base) <= rounded * declared->base)
            continue;
        Diagnostic finding = finding_at(walk, at,
                                        fmt::format("{} tightened to {}, and the device says {}",
                                                    item_is(walk, walk.events[at].act->item),
                                                    to_text(*said), to_text(*declared)));
        finding.label = "which of the two?";
        finding.why = "one of them is wrong, and the reader cannot tell which";
        finding.related.push_back({item.tightening->span, "says so"});
        finding.help = fmt::format("leave `to {}` out, and the device's torque is taken; or mend "
                                   "the device",
                                   to_text(*said));
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule other_torque;
const Rule other_torque{"other-torque", "torque", Severity::error,
                        "a torque that differs from the one that the device declares",
                        find_other_torque};

} // namespace matchmark::check::rules
