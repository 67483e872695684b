// A danger met before it was made safe: a charge not discharged, the mains not unplugged.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

void find(const Walk& walk, std::vector<Diagnostic>& findings) {
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
        finding.label = met.laid_open == met.item ? "works near it" : "lays open what it feeds";
        finding.why = fmt::format("it must be {} before this", model::list(safe, "or"));
        finding.related.push_back({walk.model.item(met.item).span, "dangerous until then"});
        findings.push_back(std::move(finding));
    });
}

} // namespace

extern const Rule hazard_not_cleared;
const Rule hazard_not_cleared{"hazard-not-cleared", "hazard", Severity::error,
                              "meeting a hazard before the actions that make it safe", find};

} // namespace matchmark::check::rules
