// A guide's torque, or its pattern, that is not what the device declares for the same fastener.
#include "check/tightenings.hpp"
#include "check/torques.hpp"
#include "check/troubles.hpp"

#include "model/bolting.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// Past what the thread bears, it is a slip of the line: the device's is taken.
bool shears(const Walk& walk, const model::Item& item, const model::Quantity& torque) {
    const model::Thread* thread = model::thread_of(walk.model, item);
    if (thread == nullptr)
        return false;
    const auto breaking = breaks_at({0, {}, torque, thread, model::grade_of(walk.model, item)});
    return breaking && torque.base > *breaking;
}

// The line's own pattern where the device says another: a cover on a soft seal warps and leaks.
void find_other_pattern(const Walk& walk, std::size_t at, std::vector<Diagnostic>& findings) {
    const Event& event = walk.events[at];
    const model::Action* action = walk.action(event);
    if (!event.act || action == nullptr || action->derived || !action->tightening)
        return;
    const model::Item& item = walk.model.item(event.act->item);
    const std::string& said = action->tightening->pattern;
    if (!item.tightening || said.empty() || item.tightening->pattern.empty() ||
        said == item.tightening->pattern)
        return;
    Diagnostic finding =
        finding_at(walk, at,
                   fmt::format("{} tightened in {}, and the device says in {}",
                               item_is(walk, event.act->item), said, item.tightening->pattern));
    finding.label = "which of the two?";
    finding.why = "in another order the cover warps, and leaks";
    finding.related.push_back({item.tightening->span, "says so"});
    finding.help =
        fmt::format("leave `in {}` out, and the device's is taken; or mend the device", said);
    findings.push_back(std::move(finding));
}

// One line names several, and one of them was told of already.
bool told_of_this_line(const Walk& walk, std::size_t at) {
    return at > 0 && walk.action(walk.events[at - 1]) == walk.action(walk.events[at]) &&
           in_dispute(walk, walk.events[at - 1]);
}

void find_other_torque(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        find_other_pattern(walk, at, findings);
        if (!in_dispute(walk, walk.events[at]) || told_of_this_line(walk, at))
            continue;
        const model::Item& item = walk.model.item(walk.events[at].act->item);
        const auto& said = walk.action(walk.events[at])->tightening->torque;
        const auto& declared = item.tightening->torque;
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
        if (shears(walk, item, *said)) {
            finding.label = "shears here";
            finding.why = "it is past what the thread bears";
            finding.help = fmt::format("write `to {}`", to_text(*declared));
            if (const auto edit = reworded(walk, *walk.action(walk.events[at]), to_text(*said),
                                           to_text(*declared)))
                finding.edits = {*edit};
        }
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule other_torque;
const Rule other_torque{"other-torque", "torque", Severity::error,
                        "a torque or a pattern that differs from what the device declares",
                        find_other_torque};

} // namespace matchmark::check::rules
