// A test of what a source feeds or a pressure presses on, done while that is still cut or let off.
#include "check/trials.hpp"
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// Where the source, or a connector on its way, was last cut before the test.
void show_cuts(const Walk& walk, std::size_t test, model::ItemId source, const char* what,
               Diagnostic& finding) {
    std::vector<model::ItemId> way = walk.model.item(source).through;
    way.push_back(source);
    for (const model::ItemId item : way) {
        if (!walk.bench.exists(item) ||
            bench::in_first_state(walk.bench, walk.state_at(test), item))
            continue;
        const auto left = last_left(walk, item, test);
        if (!left)
            continue;
        const Span place = place_of(walk, *left);
        const bool known = std::any_of(finding.related.begin(), finding.related.end(),
                                       [&](const auto& related) { return related.span == place; });
        if (!known)
            finding.related.push_back({place, what});
    }
}

// What feeds nothing presses: an accumulator that is let off, on a joint that is tried for leaks.
bool only_presses(const Walk& walk, const std::vector<model::ItemId>& sources) {
    return std::all_of(sources.begin(), sources.end(),
                       [&](model::ItemId source) { return walk.model.item(source).feeds.empty(); });
}

void report_dead_test(const Walk& walk, std::size_t at, const std::vector<model::ItemId>& sources,
                      std::vector<Diagnostic>& findings) {
    const std::string& name = walk.step(walk.events[at]).name;
    const bool presses = only_presses(walk, sources);
    Diagnostic finding = finding_at(walk, at,
                                    fmt::format("test `{}` is done while {} {}", name,
                                                sources.size() == 1 ? item_is(walk, sources.front())
                                                                    : names(walk, sources) + " are",
                                                presses ? "let off" : "cut off"));
    finding.label = presses ? "nothing presses here" : "no supply here";
    finding.why =
        presses ? "in use it presses on what the test proves" : "what it proves is fed from there";
    const std::string conditions = how_they_stand(walk, at, sources);
    for (const model::ItemId source : sources)
        show_cuts(walk, at, source, presses ? "let off here" : "cut off here", finding);
    const auto better = better_point(walk, at);
    if (better && !walk.guide().derives_put_back) {
        finding.edits = move_step(walk, at, *better);
        finding.help = fmt::format("move the test to where it is {} again; if it is done "
                                   "without, add `when {}`",
                                   presses ? "back" : "on", conditions);
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
