// Work that only a licensed person may do, in a guide for others.
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// What one trade alone may touch, and where each is first worked on.
struct Reserved {
    std::string trade;
    std::vector<model::ItemId> items;
    std::vector<std::size_t> first;
};

std::vector<Reserved> reserved_work(const Walk& walk) {
    std::vector<Reserved> all;
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        if (!walk.events[at].act)
            continue;
        const model::ItemId id = walk.events[at].act->item;
        const model::Kind& kind = walk.model.kind_of(id);
        if (may_do(walk.guide(), kind))
            continue;
        auto found = std::find_if(all.begin(), all.end(), [&](const Reserved& entry) {
            return entry.trade == kind.licensed;
        });
        if (found == all.end())
            found = all.insert(found, {kind.licensed, {}, {}});
        if (std::find(found->items.begin(), found->items.end(), id) != found->items.end())
            continue;
        found->items.push_back(id);
        found->first.push_back(at);
    }
    return all;
}

// What a reader of another trade has to hold as well.
std::string trades_with(const model::Guide& guide, const std::string& trade) {
    return guide.reader == model::ReaderLevel::licensed && !guide.trade.empty()
               ? guide.trade + " and " + trade
               : trade;
}

void find_unlicensed_work(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const Reserved& work : reserved_work(walk)) {
        const std::string who =
            work.trade.empty() ? "a licensed person" : "a licensed " + work.trade;
        Diagnostic finding =
            finding_at(walk, work.first.front(),
                       fmt::format("{} may be worked on only by {}", names(walk, work.items), who));
        finding.label = "licensed work";
        finding.why = "the guide is not written for such a reader";
        finding.related.push_back({walk.guide().span, "this guide"});
        for (std::size_t i = 1; i < work.first.size(); ++i)
            finding.related.push_back({place_of(walk, work.first[i]), "and here"});
        finding.help =
            work.trade.empty()
                ? "write `for licensed` in the guide's head, or leave this work out"
                : fmt::format("write `for licensed \"{}\"` in the guide's head, or leave "
                              "this work out",
                              trades_with(walk.guide(), work.trade));
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule unlicensed_work;
const Rule unlicensed_work{"unlicensed-work", "hazard", Severity::error,
                           "work for a licensed person in a guide for others",
                           find_unlicensed_work};

} // namespace matchmark::check::rules
