// A danger met before it was made safe: a charge not discharged, the mains not unplugged.
#include "check/too_early.hpp"
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// What the act does: a cover that goes back on lays nothing open, it is handled over what lies so.
const char* how_met(const Walk& walk, const Trouble& trouble, const bench::Exposure& met) {
    if (met.laid_open == met.item)
        return "works near it";
    return bench::reachable(walk.bench, walk.state_at(trouble.event), met.laid_open)
               ? "what it feeds lies open here"
               : "lays open what it feeds";
}

// To make it safe again in between would be work for nothing over what lies open.
void move_down(const Walk& walk, const TooEarly& early, Diagnostic& finding) {
    finding.edits.clear();
    finding.related.push_back({early.line, "live again from here"});
    mend_with(walk, finding, early.later->at, early.later->acts, {early.line});
    if (!finding.edits.empty())
        finding.edits.push_back(remove_line(walk.sources, early.line));
    finding.help = "move it down";
}

void find_hazard_not_cleared(const Walk& walk, std::vector<Diagnostic>& findings) {
    each_objection<bench::Exposure>(walk, [&](const Trouble& trouble, const bench::Exposure& met) {
        const model::Kind& kind = walk.model.kind_of(met.item);
        const model::HazardUse& use = kind.hazards[met.use];
        const model::Hazard& hazard = walk.model.hazards[use.hazard.value];
        std::vector<std::string> safe;
        for (std::size_t i = 0; i < kind.states.size(); ++i) {
            if (model::contains(use.safe, static_cast<model::StateId>(i)))
                safe.push_back("`" + kind.states[i] + "`");
        }
        Diagnostic finding =
            refused(walk, trouble,
                    fmt::format("{}: {} not made safe", hazard.title, item_is(walk, met.item)));
        finding.label = how_met(walk, trouble, met);
        finding.why = fmt::format("it must be {} before this", model::list(safe, "or"));
        finding.related.push_back({walk.model.item(met.item).span, "dangerous until then"});
        if (const auto early = too_early(walk, trouble, met))
            move_down(walk, *early, finding);
        findings.push_back(std::move(finding));
    });
}

} // namespace

extern const Rule hazard_not_cleared;
const Rule hazard_not_cleared{"hazard-not-cleared", "hazard", Severity::error,
                              "meeting a hazard before the actions that make it safe",
                              find_hazard_not_cleared};

} // namespace matchmark::check::rules
