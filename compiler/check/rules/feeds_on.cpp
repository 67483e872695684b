// A part that is fed itself and feeds others: a cell on its charger, or a board that only passes
// power on?
#include "bench/power.hpp"
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::Item;
using model::ItemId;

// What feeds it and can be cut from outside; of a cell inside nobody knows which feeds which.
ItemId supply_of(const Walk& walk, const Item& part) {
    const auto found = std::find_if(part.fed_by.begin(), part.fed_by.end(), [&](ItemId source) {
        return bench::is_supply(walk.bench, source);
    });
    return found == part.fed_by.end() ? ItemId{} : *found;
}

bool is_fed_too(const Walk& walk, const Item& part, ItemId supply) {
    const auto& fed = walk.model.item(supply).feeds;
    return std::all_of(part.feeds.begin(), part.feeds.end(), [&](ItemId id) {
        return std::find(fed.begin(), fed.end(), id) != fed.end();
    });
}

void find_feeds_on(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const ItemId id : walk.model.sources) {
        const Item& part = walk.model.item(id);
        if (part.role != model::Role::part || !walk.model.kind(part.kind).hazards.empty())
            continue;
        const ItemId supply = supply_of(walk, part);
        if (!supply.known() || is_fed_too(walk, part, supply))
            continue;
        const Item& source = walk.model.item(supply);
        Diagnostic finding;
        finding.message =
            fmt::format("{} is fed by {} and feeds others itself", model::with_kind(walk.model, id),
                        model::with_kind(walk.model, supply));
        finding.primary = part.span;
        finding.label = "live with its supply cut, as this says";
        finding.related.push_back({source.span, "what feeds it"});
        finding.why = "what feeds others counts as a store, as a cell does, whatever feeds it";
        finding.help = "if it only passes power on, give it a kind that `passes on`";
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule feeds_on;
const Rule feeds_on{"feeds-on", "live", Severity::advice,
                    "a part that a supply feeds, and that feeds others as a store would",
                    find_feeds_on};

} // namespace matchmark::check::rules
