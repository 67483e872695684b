// A supply switched on while the cover over it lies there, and is fastened only later.
#include "check/supplies.hpp"
#include "check/troubles.hpp"

#include "bench/trial_power.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::ItemId;

// What would lie within reach after the act if the covers that nothing holds were not counted.
std::optional<bench::Exposure> under_a_loose_cover(const Walk& walk, std::size_t at) {
    for (const ItemId item : walk.dangers.items) {
        const bench::State& before = walk.state_at(at);
        if (bench::open_in_trial(walk.bench, walk.dangers.start, before, item))
            continue;
        const auto met =
            bench::open_in_trial(walk.bench, walk.dangers.start, walk.state_at(at + 1), item);
        if (met && met->loose_cover.known())
            return met;
    }
    return std::nullopt;
}

// The author's line after the act that fastens the cover, with no test in between: a trial over a
// loose cover is reported there.
std::optional<std::size_t> fastened_later(const Walk& walk, std::size_t on, ItemId cover) {
    const auto holders = bench::holders_of(walk.bench, cover);
    for (std::size_t at = on + 1; at < walk.events.size() && walk.events[at].action; ++at) {
        const auto& act = walk.events[at].act;
        if (act && among(holders, act->item) &&
            bench::binds(walk.bench, walk.state_at(at + 1), act->item))
            return at;
    }
    return std::nullopt;
}

void move_down_behind(const Walk& walk, std::size_t on, std::size_t fastened, Diagnostic& finding) {
    const model::Action& action = *walk.action(walk.events[on]);
    finding.help = "move it down";
    if (action.derived || action.targets.size() != 1)
        return;
    mend_with(walk, finding, fastened + 1, {*walk.events[on].act}, {action.line});
    if (!finding.edits.empty())
        finding.edits.push_back(remove_line(walk.sources, action.line));
    finding.help = "move it down";
}

void find_on_over_loose(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size() && !walk.dangers.items.empty(); ++at) {
        const ItemId source = walk.events[at].act ? switched_on(walk, at) : ItemId{};
        const auto met = source.known() ? under_a_loose_cover(walk, at) : std::nullopt;
        const auto fastened = met ? fastened_later(walk, at, met->loose_cover) : std::nullopt;
        if (!fastened)
            continue;
        const model::HazardUse& use = walk.model.kind_of(met->item).hazards[met->use];
        Diagnostic finding = finding_at(
            walk, at,
            fmt::format("{}: {} on while nothing holds {}",
                        walk.model.hazards[use.hazard.value].title, item_is(walk, source),
                        model::with_kind(walk.model, met->loose_cover)));
        finding.label = "live from here";
        finding.why = "a cover that only lies there keeps nobody off what is below";
        finding.related.push_back({place_of(walk, *fastened), "fastened only here"});
        move_down_behind(walk, at, *fastened, finding);
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule on_over_loose;
const Rule on_over_loose{"on-over-loose", "hazard", Severity::error,
                         "a supply switched on before the cover over it is fastened",
                         find_on_over_loose};

} // namespace matchmark::check::rules
