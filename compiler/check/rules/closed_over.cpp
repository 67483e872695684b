// A cover shut for good over something that is not back yet.
#include "check/left_off.hpp"
#include "check/troubles.hpp"

#include <fmt/format.h>

namespace matchmark::check::rules {

namespace {

void find(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const LeftOff& left : left_off(walk)) {
        if (!left.closed_in)
            continue;
        const bool one = left.items.size() == 1 && walk.model.item(left.items.front()).count == 1;
        const auto& act = walk.events[left.at].act;
        const std::string closer =
            act ? model::with_kind(walk.model, act->item) : std::string("this");
        Diagnostic finding = finding_at(walk, left.at,
                                        fmt::format("{} closes over {}, which {} not back", closer,
                                                    names(walk, left.items), one ? "is" : "are"));
        finding.label = "cannot be reached after this";
        finding.why = "it would all have to come apart again";
        if (const auto gone = last_left(walk, left.items.back())) {
            if (const auto* action = walk.action(walk.events[*gone])) {
                finding.related.push_back({action->head, one ? "comes off here" : "come off here"});
            }
        }
        mend_with(walk, finding, left.at, left.acts);
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule closed_over;
const Rule closed_over{"closed-over", "closed over", Severity::error,
                       "shutting a cover on something that is not back yet", find};

} // namespace matchmark::check::rules
