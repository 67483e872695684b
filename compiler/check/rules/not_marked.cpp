// What must go back as it was, taken off without a mark.
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

bool leaves(const Walk& walk, const Event& event) {
    if (!event.act)
        return false;
    const model::Item& item = walk.model.item(event.act->item);
    const model::Kind& kind = walk.model.kind(item.kind);
    const model::Verb& verb = kind.verbs[event.act->verb];
    return !item.rare->keep.empty() && kind.set_of[verb.to] == 0 &&
           bench::in_first_state(walk.bench, walk.before(event), event.act->item);
}

// What one line takes off unmarked.
struct Unmarked {
    std::size_t at = 0;
    std::vector<model::ItemId> items;
};

std::vector<Unmarked> unmarked(const Walk& walk) {
    std::vector<Unmarked> all;
    std::vector<model::ItemId> seen;
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const Event& event = walk.events[at];
        if (!leaves(walk, event))
            continue;
        model::ItemRef ref;
        ref.item = event.act->item;
        const bool marked = bench::every_flag(walk.model, walk.before(event), ref, bench::marked);
        if (marked || std::find(seen.begin(), seen.end(), ref.item) != seen.end())
            continue;
        seen.push_back(ref.item);
        const bool same_line =
            !all.empty() && walk.action(walk.events[all.back().at]) == walk.action(event);
        if (!same_line)
            all.push_back({at, {}});
        all.back().items.push_back(ref.item);
    }
    return all;
}

void find_not_marked(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const Unmarked& found : unmarked(walk)) {
        const bool one = !several(walk, found.items);
        const model::Item& first = walk.model.item(found.items.front());
        Diagnostic finding = finding_at(
            walk, found.at,
            fmt::format("{} {} off unmarked", names(walk, found.items), one ? "comes" : "come"));
        finding.label = one ? "comes off here" : "come off here";
        finding.why = fmt::format("{} {} must be as before", one ? "its" : "their",
                                  model::list(first.rare->keep));
        std::string line = "mark ";
        for (const auto id : found.items) {
            const model::Item& item = walk.model.item(id);
            finding.related.push_back({item.span, "declared to go back as it was"});
            line += (id == found.items.front() ? "" : ", ") + item.name;
        }
        finding.edits = insert_before(walk, found.at, {line});
        finding.help = "add this line before it";
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule not_marked;
const Rule not_marked{"not-marked", "not back", Severity::error,
                      "taking off, unmarked, what must go back as it was", find_not_marked};

} // namespace matchmark::check::rules
