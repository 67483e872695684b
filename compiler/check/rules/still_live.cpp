// Work on what a source still feeds.
#include "bench/power.hpp"
#include "check/dangers.hpp"
#include "check/too_early.hpp"
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

void find_still_live(const Walk& walk, std::vector<Diagnostic>& findings) {
    const ToldAsTooEarly told(walk);
    each_refusal<bench::StillLive>(walk, [&](const Trouble& trouble,
                                             const bench::StillLive& reason) {
        if (told.covers(trouble))
            return;
        const bench::Act& act = act_of(walk, trouble);
        const model::Kind& kind = walk.model.kind_of(act.item);
        const std::string done =
            bench::is_taken_back(kind, kind.verbs[act.verb])
                ? model::with_kind(walk.model, act.item) + " cannot be made safe"
                : item_is(walk, act.item) + " worked on";
        const bool driven = among(walk.model.item(reason.source).feeding->drives, reason.fed) ||
                            walk.model.kind_of(reason.fed).moves;
        Diagnostic finding = refused(
            walk, trouble,
            fmt::format("{}{} while `{}` {}", danger_of(walk.model, reason.source), done,
                        walk.model.item(reason.fed).name, driven ? "may be set going" : "is live"));
        finding.label = "under power here";
        finding.why =
            fmt::format("{} still feeds {}`{}`", model::with_kind(walk.model, reason.source),
                        driven ? "what drives " : "", walk.model.item(reason.fed).name);
        finding.related.push_back({walk.model.item(reason.source).span, "the source"});
        if (const auto early = too_early(walk, trouble))
            move_down(walk, *early, "live again from here", finding);
        findings.push_back(std::move(finding));
    });
}

} // namespace

extern const Rule still_live;
const Rule still_live{"still-live", "live", Severity::error,
                      "parting, joining or moving what a source still feeds", find_still_live};

} // namespace matchmark::check::rules
