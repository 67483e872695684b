// A danger met before it was made safe: a charge not discharged, the mains not unplugged.
#include "check/too_early.hpp"
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// What the act does: a cover that goes back on lays nothing open, it is handled over what lies so.
const char* how_met(const Walk& walk, const Trouble& trouble, const bench::Exposure& met) {
    if (met.laid_open == met.item)
        return bench::is_met_by_what_it_feeds(walk.model.item(met.item)) &&
                       walk.events[trouble.event].act->item != met.item
                   ? "works on what it feeds"
                   : "works near it";
    return bench::reachable(walk.bench, walk.state_at(trouble.event), met.laid_open)
               ? "what it feeds lies open here"
               : "lays open what it feeds";
}

// Is it a supply that is off, and nobody has proved it dead? Asked of what is missing: the walk
// goes on as if that had been done.
bool is_cut_off(const Walk& walk, const Trouble& trouble, const bench::Exposure& met) {
    const model::Kind& kind = walk.model.kind_of(met.item);
    const auto first = std::find_if(trouble.missing.begin(), trouble.missing.end(),
                                    [&](const bench::Act& act) { return act.item == met.item; });
    return bench::is_met_by_what_it_feeds(walk.model.item(met.item)) && kind.live != 0 &&
           first != trouble.missing.end() && (kind.verbs[first->verb].from & kind.live) == 0;
}

// The test that ran the device after it was made safe.
std::optional<std::size_t> brought_back_in(const Walk& walk, const Trouble& trouble,
                                           model::ItemId item) {
    for (std::size_t at = trouble.event; at-- > 0;) {
        if (!bench::is_dangerous(walk.bench, walk.state_at(at), item))
            return walk.events[at].action ? std::nullopt : std::optional(at);
    }
    return std::nullopt;
}

// Before all it was made safe: in a way back that is derived there is no line for it.
void tell_of_test(const Walk& walk, const Trouble& trouble, std::size_t test, model::ItemId item,
                  Diagnostic& finding) {
    finding.related.push_back({place_of(walk, test), "the device is run here"});
    const model::Action* action = walk.action(walk.events[trouble.event]);
    if (action == nullptr || !action->derived || trouble.missing.empty())
        return;
    finding.edits.clear();
    finding.help = fmt::format(
        "test `{}` brings it back: write the put-back out, without `derived`, with `{}` "
        "after the test; if the test does not, name `{}` in its `when`",
        walk.step(walk.events[test]).name, model::list(lines_for(walk, trouble.missing, {}), "and"),
        walk.model.item(item).name);
}

void find_hazard_not_cleared(const Walk& walk, std::vector<Diagnostic>& findings) {
    const ToldAsTooEarly told(walk);
    each_objection<bench::Exposure>(walk, [&](const Trouble& trouble, const bench::Exposure& met) {
        if (told.covers(trouble))
            return;
        const model::Kind& kind = walk.model.kind_of(met.item);
        const model::HazardUse& use = kind.hazards[met.use];
        const model::Hazard& hazard = walk.model.hazards[use.hazard.value];
        Diagnostic finding =
            refused(walk, trouble,
                    fmt::format("{}: {} not made safe", hazard.title, item_is(walk, met.item)));
        finding.label = how_met(walk, trouble, met);
        finding.why =
            fmt::format("it must be {} before this{}", model::states_in_words(kind, use.safe),
                        is_cut_off(walk, trouble, met) ? ": the wrong switch may be off" : "");
        finding.related.push_back({walk.model.item(met.item).span, "dangerous until then"});
        if (const auto early = too_early(walk, trouble))
            move_down(walk, *early, "live again from here", finding);
        if (const auto test = brought_back_in(walk, trouble, met.item))
            tell_of_test(walk, trouble, *test, met.item, finding);
        findings.push_back(std::move(finding));
    });
}

} // namespace

extern const Rule hazard_not_cleared;
const Rule hazard_not_cleared{"hazard-not-cleared", "hazard", Severity::error,
                              "meeting a hazard before the actions that make it safe",
                              find_hazard_not_cleared};

} // namespace matchmark::check::rules
