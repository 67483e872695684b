// A cover shut for good over something that is not back yet.
#include "check/too_early.hpp"
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// Put on, and not tightened.
bool leads_home(const Walk& walk, const bench::Act& act) {
    const model::Kind& kind = walk.model.kind_of(act.item);
    return model::leads_home(kind, kind.verbs[act.verb]);
}

void report_closed_over(const Walk& walk, std::size_t at, const std::vector<model::ItemId>& items,
                        const std::vector<bench::Act>& acts, std::vector<Diagnostic>& findings) {
    const bool one = items.size() == 1 && walk.model.item(items.front()).count == 1;
    const auto& act = walk.events[at].act;
    const std::string closer = act ? model::with_kind(walk.model, act->item) : std::string("this");
    const bool closers = act && several(walk, {act->item});
    Diagnostic finding = finding_at(walk, at,
                                    fmt::format("{} {} over {}, which {} not back", closer,
                                                closers ? "close" : "closes", names(walk, items),
                                                one ? "is" : "are"));
    finding.label = "cannot be reached after this";
    finding.why = "it would all have to come apart again";
    if (const auto gone = last_left(walk, items.back())) {
        const Event& event = walk.events[*gone];
        const bool half_way = event.act && leads_home(walk, *event.act);
        if (const auto* action = walk.action(event))
            finding.related.push_back({action->head, half_way ? "left so here"
                                                     : one    ? "comes off here"
                                                              : "come off here"});
    }
    mend_with(walk, finding, at, acts);
    findings.push_back(std::move(finding));
}

void find_closed_over(const Walk& walk, std::vector<Diagnostic>& findings) {
    const ToldAsTooEarly told(walk);
    for (const LeftOff& left : walk.left_off) {
        if (left.closed_in && !told.covers(left))
            report_closed_over(walk, left.at, left.items, left.acts, findings);
    }
}

} // namespace

extern const Rule closed_over;
const Rule closed_over{"closed-over", "closed over", Severity::error,
                       "shutting a cover on something that is not back yet", find_closed_over};

} // namespace matchmark::check::rules
