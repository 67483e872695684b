// A part that another one, not moved aside yet, keeps from passing.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

void find_still_blocked(const Walk& walk, std::vector<Diagnostic>& findings) {
    each_refusal<bench::StillBlocked>(walk, [&](const Trouble& trouble,
                                                const bench::StillBlocked& reason) {
        const bench::Act& act = act_of(walk, trouble);
        Diagnostic finding = refused(
            walk, trouble, fmt::format("{} cannot pass", model::with_kind(walk.model, act.item)));
        finding.label = "blocked here";
        finding.why = fmt::format("{} stands in its way", model::with_kind(walk.model, reason.by));
        finding.related.push_back({walk.model.item(reason.by).span, "blocks it"});
        findings.push_back(std::move(finding));
    });
}

} // namespace

extern const Rule still_blocked;
const Rule still_blocked{"still-blocked", "held", Severity::error,
                         "taking out or putting in a part that another keeps from passing",
                         find_still_blocked};

} // namespace matchmark::check::rules
