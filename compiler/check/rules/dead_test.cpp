// A test of what a source feeds, done while that source is still cut off.
#include "check/trials.hpp"
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// Where the source, or a connector on its way, was last cut before the test.
void show_cuts(const Walk& walk, std::size_t test, model::ItemId source, Diagnostic& finding) {
    std::vector<model::ItemId> way = walk.model.item(source).through;
    way.push_back(source);
    for (const model::ItemId item : way) {
        if (!walk.bench.exists(item) ||
            bench::in_first_state(walk.bench, walk.state_at(test), item))
            continue;
        const auto left = last_left(walk, item);
        if (!left || *left >= test)
            continue;
        const Span place = place_of(walk, *left);
        const bool known = std::any_of(finding.related.begin(), finding.related.end(),
                                       [&](const auto& related) { return related.span == place; });
        if (!known)
            finding.related.push_back({place, "cut off here"});
    }
}

void report_dead_test(const Walk& walk, std::size_t at, const std::vector<model::ItemId>& sources,
                      std::vector<Diagnostic>& findings) {
    const std::string& name = walk.step(walk.events[at]).name;
    Diagnostic finding =
        finding_at(walk, at,
                   fmt::format("test `{}` is done while {} cut off", name,
                               sources.size() == 1 ? item_is(walk, sources.front())
                                                   : names(walk, sources) + " are"));
    finding.label = "no supply here";
    finding.why = "what it proves is fed from there";
    const std::string conditions = how_they_stand(walk, at, sources);
    for (const model::ItemId source : sources)
        show_cuts(walk, at, source, finding);
    const auto better = better_point(walk, at);
    if (better && !walk.guide().derives_put_back) {
        finding.edits = move_test(walk, at, *better);
        finding.help = fmt::format("move the test to where it is on again; if it is done without, "
                                   "add `when {}`",
                                   conditions);
    } else {
        finding.edits = add_condition(walk, at, conditions);
        finding.help = "say that it is done without";
        if (walk.guide().derives_put_back && !walk.step(walk.events[at]).when.empty())
            finding.help += "; or leave out what keeps the device open, and it is tried closed";
        finding.safe = false; // or it was meant to be done under power
    }
    findings.push_back(std::move(finding));
}

void find_dead_test(const Walk& walk, std::vector<Diagnostic>& findings) {
    const auto proven = proofs(walk);
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        if (walk.events[at].action || displaced(walk, walk.step(walk.events[at])))
            continue;
        const bool early = std::any_of(proven.begin(), proven.end(), [&](const Proven& entry) {
            return !entry.by && entry.early == at; // reported as `untested`
        });
        if (early || told_not_ready(walk, at) || !not_back_at(walk, at).empty())
            continue;
        if (const auto sources = cut_sources(walk, at); !sources.empty())
            report_dead_test(walk, at, sources, findings);
    }
}

} // namespace

extern const Rule dead_test;
const Rule dead_test{"dead-test", "tests", Severity::error,
                     "a test of what a source feeds, done while that source is cut off",
                     find_dead_test};

} // namespace matchmark::check::rules
