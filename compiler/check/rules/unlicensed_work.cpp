// Work that only a licensed person may do, in a guide for others.
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace matchmark::check::rules {

namespace {

bool may_do(const model::Guide& guide, const model::Kind& kind) {
    if (guide.reader != model::ReaderLevel::licensed)
        return false;
    return kind.licensed.empty() || guide.trade.empty() || guide.trade == kind.licensed;
}

void find(const Walk& walk, std::vector<Diagnostic>& findings) {
    std::vector<model::ItemId> seen;
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        if (!walk.events[at].act)
            continue;
        const model::ItemId id = walk.events[at].act->item;
        const model::Kind& kind = walk.model.kind_of(id);
        if (!kind.needs_license || may_do(walk.guide(), kind))
            continue;
        if (std::find(seen.begin(), seen.end(), id) != seen.end())
            continue;
        seen.push_back(id);
        const std::string who =
            kind.licensed.empty() ? "a licensed person" : "a licensed " + kind.licensed;
        Diagnostic finding = finding_at(
            walk, at,
            fmt::format("{} may be worked on only by {}", model::with_kind(walk.model, id), who));
        finding.label = "licensed work";
        finding.why = "the guide is not written for such a reader";
        finding.related.push_back({walk.guide().span, "this guide"});
        finding.help =
            kind.licensed.empty()
                ? "write `for licensed` in the guide's head, or leave this work out"
                : fmt::format("write `for licensed \"{}\"` in the guide's head, or leave "
                              "this work out",
                              kind.licensed);
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule unlicensed_work;
const Rule unlicensed_work{"unlicensed-work", "hazard", Severity::error,
                           "work for a licensed person in a guide for others", find};

} // namespace matchmark::check::rules
