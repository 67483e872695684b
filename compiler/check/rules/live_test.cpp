// A test under power, with what can hurt lying open.
#include "check/trials.hpp"
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// Was it laid open, or switched on, by an act that is missing or met the danger itself? Then that
// is reported.
bool reported_before(const Walk& walk, std::size_t test, model::ItemId item) {
    if (!bench::is_dangerous(walk.bench, walk.state_at(test), item))
        return false; // the test itself charges it
    if (assumed(walk, item))
        return true;
    return std::any_of(walk.troubles.begin(), walk.troubles.end(), [&](const Trouble& trouble) {
        const auto* met = std::get_if<bench::Exposure>(&trouble.objection);
        return met != nullptr && met->item == item && trouble.event <= test;
    });
}

void find(const Walk& walk, std::vector<Diagnostic>& findings) {
    if (walk.dangers.items.empty())
        return;
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        if (walk.events[at].action)
            continue;
        const model::Step& test = walk.step(walk.events[at]);
        const auto met = open_under_power(walk, walk.state_at(at), test);
        if (!met || reported_before(walk, at, met->item) || told_not_ready(walk, at))
            continue;
        const model::Kind& kind = walk.model.kind_of(met->item);
        const model::Hazard& hazard = walk.model.hazards[kind.hazards[met->use].hazard.value];
        Diagnostic finding = finding_at(
            walk, at,
            fmt::format("test `{}` is done with {} within reach, and {} not made safe", test.name,
                        model::with_kind(walk.model, met->laid_open), item_is(walk, met->item)));
        finding.label = fmt::format("hazard `{}` here", hazard.name);
        finding.why = "the device is tried open, under power";
        finding.related.push_back({kind.hazards[met->use].span, "the hazard"});
        const auto better = better_point(walk, at);
        if (better && !walk.guide().derives_put_back) {
            finding.edits = move_test(walk, at, *better);
            finding.help = "try it closed: move the test";
        } else {
            finding.help = "close the device first; or, where it must be tried open, say so with "
                           "`when`: where the source stands, and what is off";
        }
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule live_test;
const Rule live_test{"live-test", "tests", Severity::error,
                     "a test under power with a danger within reach, and no word that it is meant",
                     find};

} // namespace matchmark::check::rules
