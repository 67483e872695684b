// What must go back as it was, taken off without a mark.
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace matchmark::check::rules {

namespace {

bool leaves(const Walk& walk, const Event& event) {
    if (!event.act)
        return false;
    const model::Item& item = walk.model.item(event.act->item);
    const model::Kind& kind = walk.model.kind(item.kind);
    const model::Verb& verb = kind.verbs[event.act->verb];
    return !item.keep.empty() && kind.set_of[verb.to] == 0 &&
           bench::in_first_state(walk.bench, event.before, event.act->item);
}

void find(const Walk& walk, std::vector<Diagnostic>& findings) {
    std::vector<model::ItemId> seen;
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const Event& event = walk.events[at];
        if (!leaves(walk, event))
            continue;
        const model::ItemId id = event.act->item;
        model::ItemRef ref;
        ref.item = id;
        if (bench::every_flag(walk.model, event.before, ref, bench::marked))
            continue;
        if (std::find(seen.begin(), seen.end(), id) != seen.end())
            continue;
        seen.push_back(id);
        const model::Item& item = walk.model.item(id);
        Diagnostic finding = finding_at(
            walk, at, fmt::format("{} comes off unmarked", model::with_kind(walk.model, id)));
        finding.label = "comes off here";
        finding.why = fmt::format("its {} must be as before", model::list(item.keep));
        finding.related.push_back({item.span, "declared to go back as it was"});
        finding.edits = insert_before(walk, at, {"mark " + item.name});
        finding.help = "add this line before it";
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule not_marked;
const Rule not_marked{"not-marked", "not back", Severity::error,
                      "taking off, unmarked, what must go back as it was", find};

} // namespace matchmark::check::rules
