// A part taken out, put in or opened while something still ties it to what stays.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

void find_still_held(const Walk& walk, std::vector<Diagnostic>& findings) {
    each_refusal<bench::StillHeld>(
        walk, [&](const Trouble& trouble, const bench::StillHeld& reason) {
            const bench::Act& act = act_of(walk, trouble);
            Diagnostic finding =
                refused(walk, trouble, fmt::format("{} still held", item_is(walk, act.item)));
            finding.label = "would tear what holds it";
            finding.why = fmt::format("{} still {} it to what stays", names(walk, reason.by),
                                      several(walk, reason.by) ? "tie" : "ties");
            for (const auto tie : reason.by)
                finding.related.push_back({walk.model.item(tie).span, "holds it"});
            findings.push_back(std::move(finding));
        });
}

} // namespace

extern const Rule still_held;
const Rule still_held{"still-held", "held", Severity::error,
                      "removing or opening a part that something still ties to what stays",
                      find_still_held};

} // namespace matchmark::check::rules
