// A part renewed while the old one is still in its place.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

void find_still_in_place(const Walk& walk, std::vector<Diagnostic>& findings) {
    each_objection<StillInPlace>(walk, [&](const Trouble& trouble, const StillInPlace&) {
        const model::Action& action = *walk.action(walk.events[trouble.event]);
        const model::ItemId item = action.targets.front().ref.item;
        Diagnostic finding =
            refused(walk, trouble, fmt::format("{} replaced while still in", item_is(walk, item)));
        finding.label = "the old one is still in";
        finding.why = "the new one has no room until the old one is out";
        findings.push_back(std::move(finding));
    });
}

} // namespace

extern const Rule still_in_place;
const Rule still_in_place{"still-in-place", "held", Severity::error,
                          "replacing a part that was not taken out", find_still_in_place};

} // namespace matchmark::check::rules
