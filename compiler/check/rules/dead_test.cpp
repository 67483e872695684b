// A test of what a source feeds, done while that source is still cut off.
#include "check/trials.hpp"
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// The sources that are cut when the test is done, but for those that the walk itself cut: the line
// that is missing for these is reported.
std::vector<model::ItemId> cut_sources(const Walk& walk, std::size_t test) {
    auto sources = sources_of_test(walk, test);
    std::erase_if(sources, [&](model::ItemId source) {
        const auto& through = walk.model.item(source).through;
        return bench::is_restored(walk.bench, walk.state_at(test), source) ||
               assumed(walk, source) ||
               std::any_of(through.begin(), through.end(),
                           [&](model::ItemId connector) { return assumed(walk, connector); });
    });
    return sources;
}

// Of the source, and of the connectors on its way: what is not as assembled, and how it stands.
std::vector<std::pair<model::ItemId, std::string>> cut_by(const Walk& walk, std::size_t test,
                                                          model::ItemId source) {
    std::vector<model::ItemId> way = walk.model.item(source).through;
    way.push_back(source);
    std::vector<std::pair<model::ItemId, std::string>> cuts;
    for (const model::ItemId item : way) {
        const bench::State& state = walk.state_at(test);
        if (!walk.bench.exists(item) || bench::in_first_state(walk.bench, state, item))
            continue;
        const model::StateId stands = bench::state_of(walk.bench, state, item, 0, 0);
        cuts.emplace_back(item, walk.model.kind_of(item).states[stands]);
    }
    return cuts;
}

void report(const Walk& walk, std::size_t at, const std::vector<model::ItemId>& sources,
            std::vector<Diagnostic>& findings) {
    const std::string& name = walk.step(walk.events[at]).name;
    Diagnostic finding =
        finding_at(walk, at,
                   fmt::format("test `{}` is done while {} cut off", name,
                               sources.size() == 1 ? item_is(walk, sources.front())
                                                   : names(walk, sources) + " are"));
    finding.label = "no supply here";
    finding.why = "what it proves is fed from there";
    std::string conditions;
    for (const model::ItemId source : sources) {
        for (const auto& [item, state] : cut_by(walk, at, source)) {
            conditions += fmt::format("{}{} {}", conditions.empty() ? "" : ", ",
                                      walk.model.item(item).name, state);
            if (const auto left = last_left(walk, item); left && *left < at)
                finding.related.push_back({place_of(walk, *left), "cut off here"});
        }
    }
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

void find(const Walk& walk, std::vector<Diagnostic>& findings) {
    const auto proven = proofs(walk);
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        if (walk.events[at].action || displaced(walk, walk.step(walk.events[at])))
            continue;
        const bool early = std::any_of(proven.begin(), proven.end(), [&](const Proven& entry) {
            return !entry.by && entry.early == at; // reported as `untested`
        });
        const bool counts = walk.step(walk.events[at]).section == model::Section::put_back ||
                            std::any_of(proven.begin(), proven.end(),
                                        [&](const Proven& entry) { return entry.by == at; });
        if (early || !counts)
            continue;
        if (const auto sources = cut_sources(walk, at); !sources.empty())
            report(walk, at, sources, findings);
    }
}

} // namespace

extern const Rule dead_test;
const Rule dead_test{"dead-test", "tests", Severity::error,
                     "a test of what a source feeds, done while that source is cut off", find};

} // namespace matchmark::check::rules
