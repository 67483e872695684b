// A part renewed while the old one is still in its place.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// The new one is taken before it is fitted.
void move_up(const Walk& walk, const Trouble& trouble, const model::Action& action,
             Diagnostic& finding) {
    const std::string& text = walk.sources.file(action.line.file).text;
    const std::string line = text.substr(action.line.begin, action.line.end - action.line.begin);
    finding.related.push_back({place_of(walk, trouble.mend_at), "fitted here"});
    finding.edits = insert_before(walk, trouble.mend_at, {line});
    if (!finding.edits.empty())
        finding.edits.push_back(remove_line(walk.sources, action.line));
    finding.help = "move it up";
}

void find_still_in_place(const Walk& walk, std::vector<Diagnostic>& findings) {
    each_objection<StillInPlace>(walk, [&](const Trouble& trouble, const StillInPlace&) {
        const model::Action& action = *walk.action(walk.events[trouble.event]);
        const model::ItemId item = action.targets.front().ref.item;
        Diagnostic finding =
            refused(walk, trouble, fmt::format("{} replaced while still in", item_is(walk, item)));
        finding.label = "the old one is still in";
        finding.why = "the new one has no room until the old one is out";
        if (trouble.missing.empty() && !trouble.done_later.empty())
            move_up(walk, trouble, action, finding);
        findings.push_back(std::move(finding));
    });
}

} // namespace

extern const Rule still_in_place;
const Rule still_in_place{"still-in-place", "held", Severity::error,
                          "replacing a part that was not taken out", find_still_in_place};

} // namespace matchmark::check::rules
