// A torque that would shear the fastener.
#include "check/troubles.hpp"

#include <fmt/format.h>

namespace matchmark::check::rules {

namespace {

const model::Thread* thread_of(const Walk& walk, const model::Item& item) {
    for (const auto& thread : walk.model.threads) {
        if (thread.name == item.thread)
            return &thread;
    }
    return nullptr;
}

void find(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const Event& event = walk.events[at];
        if (!event.act)
            continue;
        const model::Item& item = walk.model.item(event.act->item);
        const auto& torque = walk.action(event)->tightening.torque;
        const model::Thread* thread = thread_of(walk, item);
        if (!torque || thread == nullptr || !thread->breaks_at)
            continue;
        if (!comparable(*torque, *thread->breaks_at) || torque->base <= thread->breaks_at->base)
            continue;
        Diagnostic finding = finding_at(walk, at,
                                        fmt::format("{} is past what {} bears", to_text(*torque),
                                                    model::with_kind(walk.model, event.act->item)));
        finding.label = "shears here";
        finding.why =
            fmt::format("a {} screw breaks at {}", thread->name, to_text(*thread->breaks_at));
        const bool declared = item.tightening && item.tightening->torque;
        finding.related.push_back({declared ? item.tightening->span : item.span, "declared here"});
        finding.related.push_back({thread->span, "the thread"});
        finding.help = "look the torque up again, and its unit";
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule torque_too_high;
const Rule torque_too_high{"torque-too-high", "torque", Severity::error,
                           "a torque past what the thread can bear", find};

} // namespace matchmark::check::rules
