// A supply switched on over what lies open, and cut again, with nothing tried in between.
#include "check/supplies.hpp"
#include "check/trials.hpp"
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::ItemId;

// The event that cuts the source again, if nothing is tried, measured or done by hand before it:
// work over what lies open is reported where it is done.
std::optional<std::size_t> cut_at_once(const Walk& walk, std::size_t on, ItemId source) {
    for (std::size_t at = on + 1; at < walk.events.size(); ++at) {
        const Event& event = walk.events[at];
        const model::Action* action = walk.action(event);
        if (action == nullptr || action->sort == model::ActionSort::measure)
            return std::nullopt;
        if (!event.act)
            continue;
        if (event.act->item == source || among(walk.model.item(source).through, event.act->item))
            return bench::is_live(walk.bench, walk.state_at(at + 1), source) ? std::nullopt
                                                                             : std::optional(at);
        if (!walk.model.kind_of(event.act->item).verbs[event.act->verb].from_outside)
            return std::nullopt;
    }
    return std::nullopt;
}

// What lay harmless, and is a danger within reach once the act is done.
std::optional<bench::Exposure> laid_bare_by(const Walk& walk, std::size_t at) {
    for (const ItemId item : walk.dangers.items) {
        if (bench::laid_bare(walk.bench, walk.dangers.start, walk.state_at(at), item))
            continue;
        auto met = bench::laid_bare(walk.bench, walk.dangers.start, walk.state_at(at + 1), item);
        if (met)
            return met;
    }
    return std::nullopt;
}

// Where the test between the two is what is missing, that is told.
bool lacks_a_test(const Walk& walk) {
    const auto all = proofs(walk);
    return std::any_of(all.begin(), all.end(),
                       [](const Proven& proven) { return !proven.by && !proven.early; });
}

// Both lines go, and their steps where nothing else stands in them.
void take_out_both(const Walk& walk, std::size_t on, std::size_t off, Diagnostic& finding) {
    finding.help = "leave both lines out, or say what is tried between them";
    for (const std::size_t at : {on, off}) {
        const model::Action* action = walk.action(walk.events[at]);
        if (action->derived || action->targets.size() != 1)
            return;
    }
    const auto both = walk.events[on].step == walk.events[off].step ? std::size_t{2} : 1;
    for (const std::size_t at : {on, off}) {
        const model::Step& step = walk.step(walk.events[at]);
        if (step.actions.size() > both)
            finding.edits.push_back(remove_line(walk.sources, walk.action(walk.events[at])->line));
        else if (at == on || both == 1)
            finding.edits.push_back(remove_declaration(walk.sources, step.body));
    }
}

void find_on_over_open(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size() && !walk.dangers.items.empty(); ++at) {
        const ItemId source = walk.events[at].act ? switched_on(walk, at) : ItemId{};
        const auto off = source.known() ? cut_at_once(walk, at, source) : std::nullopt;
        const auto met = off ? laid_bare_by(walk, at) : std::nullopt;
        if (!met || lacks_a_test(walk))
            continue;
        const model::HazardUse& use = walk.model.kind_of(met->item).hazards[met->use];
        Diagnostic finding = finding_at(walk, at,
                                        fmt::format("{}: {} on with {} within reach",
                                                    walk.model.hazards[use.hazard.value].title,
                                                    item_is(walk, source),
                                                    model::with_kind(walk.model, met->laid_open)));
        finding.label = "live from here";
        finding.why = "nothing is tried before it is cut again";
        finding.related.push_back({place_of(walk, *off), "cut again here"});
        take_out_both(walk, at, *off, finding);
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule on_over_open;
const Rule on_over_open{"on-over-open", "hazard", Severity::error,
                        "a supply switched on over what lies open, and cut again, for nothing",
                        find_on_over_open};

} // namespace matchmark::check::rules
