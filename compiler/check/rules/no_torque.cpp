// A threaded fastener tightened with no torque where its kind asks for one.
#include "check/tightenings.hpp"
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

void find_no_torque(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const Event& event = walk.events[at];
        if (!makes_fast(walk, event) || walk.action(event)->tightening->torque)
            continue;
        const model::Item& item = walk.model.item(event.act->item);
        if (!walk.model.kind(item.kind).asks_torque)
            continue;
        Diagnostic finding = finding_at(
            walk, at,
            fmt::format("{} tightened to no stated torque", item_is(walk, event.act->item)));
        finding.label = "how tight?";
        finding.why = "too loose leaks or works off, too tight strips the thread";
        finding.related.push_back({item.span, "declared here, with no `torque`"});
        finding.help = fmt::format("add `torque` to `{}`, or `to ... N.m` here", item.name);
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule no_torque;
const Rule no_torque{"no-torque", "torque", Severity::error,
                     "tightening, to no stated torque, a fastener whose kind asks for one",
                     find_no_torque};

} // namespace matchmark::check::rules
