// A measurement with a current of its own, on a circuit that is on.
#include "bench/proof.hpp"
#include "bench/running.hpp"
#include "bench/trial_power.hpp"
#include "check/trials.hpp"
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::ItemId;

// The first source that is on, of those that feed what the test proves.
ItemId still_on(const Walk& walk, std::size_t at) {
    const model::Step& test = walk.step(walk.events[at]);
    const auto tried = bench::proven_items(walk.bench, test);
    for (const ItemId source : bench::sources_feeding(walk.bench, tried)) {
        if (bench::is_live(walk.bench, walk.state_at(at), source) && !moved_by_walk(walk, source))
            return source;
    }
    return {};
}

void find_measured_live(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        if (walk.events[at].action || !walk.step(walk.events[at]).on_dead_circuits ||
            told_not_ready(walk, at))
            continue;
        const ItemId source = still_on(walk, at);
        if (!source.known())
            continue;
        Diagnostic finding =
            finding_at(walk, at,
                       fmt::format("test `{}` measures while {} on",
                                   walk.step(walk.events[at]).name, item_is(walk, source)));
        finding.label = "its tool is for dead circuits";
        finding.why = "on a live one it shows nothing true, and can burst in the hand";
        finding.related.push_back({walk.model.item(source).span, "the source"});
        finding.help = "cut it off before the test, and take it out of its `when`";
        const model::Kind& kind = walk.model.kind_of(source);
        const auto acts =
            bench::bring_to(walk.bench, walk.state_at(at), source,
                            model::states_of_set(kind, 0) & ~kind.live, wish_from(walk, at));
        if (acts && !bench::says_where(walk.step(walk.events[at]), source))
            mend_with(walk, finding, at, *acts);
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule measured_live;
const Rule measured_live{"measured-live", "tests", Severity::error,
                         "a test with a tool for dead circuits, done while a source is on",
                         find_measured_live};

} // namespace matchmark::check::rules
