// Work on what is still covered, or buried under another fastener.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

void find_out_of_reach(const Walk& walk, std::vector<Diagnostic>& findings) {
    each_refusal<bench::OutOfReach>(
        walk, [&](const Trouble& trouble, const bench::OutOfReach& reason) {
            const bench::Act& act = act_of(walk, trouble);
            Diagnostic finding =
                refused(walk, trouble, fmt::format("{} out of reach", item_is(walk, act.item)));
            finding.label = "cannot be got at here";
            finding.why = fmt::format("{} {} in the way", names(walk, reason.by),
                                      several(walk, reason.by) ? "are" : "is");
            if (reason.because.known())
                finding.related.push_back({reason.because, "says what is in the way"});
            findings.push_back(std::move(finding));
        });
}

} // namespace

extern const Rule out_of_reach;
const Rule out_of_reach{"out-of-reach", "reach", Severity::error,
                        "work on what is still covered, or buried under another fastener",
                        find_out_of_reach};

} // namespace matchmark::check::rules
