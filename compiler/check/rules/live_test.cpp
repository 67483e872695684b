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
    if (moved_by_walk(walk, item))
        return true;
    return std::any_of(walk.troubles.begin(), walk.troubles.end(), [&](const Trouble& trouble) {
        const auto* met = std::get_if<bench::Exposure>(&trouble.objection);
        return met != nullptr && met->item == item && trouble.event <= test;
    });
}

std::string in_words(const Walk& walk, const std::vector<model::Condition>& conditions) {
    std::string words;
    for (const model::Condition& condition : conditions) {
        const auto& item = walk.model.item(condition.item.item);
        words += fmt::format("{}{} {}", words.empty() ? "" : ", ", item.name,
                             walk.model.kind(item.kind).states[condition.state]);
    }
    return words;
}

// What to write where it is meant to be open: where the danger's source stands.
std::string when_meant(const Walk& walk, std::size_t at, model::ItemId danger) {
    const model::Item& item = walk.model.item(danger);
    const bench::State& state = walk.state_at(at);
    std::string words = "where the source stands";
    if (!item.feeds.empty())
        words = fmt::format(
            "`{} {}`", item.name,
            walk.model.kind(item.kind).states[bench::state_of(walk.bench, state, danger, 0, 0)]);
    return words;
}

// Closed, if it can be: without the conditions that keep it open.
void mend(const Walk& walk, std::size_t at, model::ItemId danger, Diagnostic& finding) {
    const bool derived = walk.guide().derives_put_back;
    const auto better = better_point(walk, at);
    if (better && !derived) {
        finding.edits = move_step(walk, at, *better);
        finding.help = "try it closed: move the test";
        return;
    }
    model::Step closed = walk.step(walk.events[at]);
    std::vector<model::Condition> open;
    std::erase_if(closed.when.edit(), [&](const model::Condition& condition) {
        const auto& first = walk.model.kind_of(condition.item.item).set_first;
        const bool as_assembled =
            std::find(first.begin(), first.end(), condition.state) != first.end();
        if (!as_assembled)
            open.push_back(condition);
        return !as_assembled;
    });
    const auto closed_at = open.empty() ? std::nullopt : better_point(walk, at, closed);
    if (closed_at) {
        finding.edits = move_step(walk, at, derived ? std::nullopt : closed_at, closed.when);
        finding.safe = false; // or it has to be watched open
        finding.help = fmt::format("try it closed, without `{}`; or, if it has to be watched open, "
                                   "add to its `when` {}",
                                   in_words(walk, open), when_meant(walk, at, danger));
        return;
    }
    finding.help = "close the device first; or, where it must be tried open, say so with `when`: " +
                   when_meant(walk, at, danger) + ", and what is off";
}

std::string how_open(const Walk& walk, const bench::Exposure& met) {
    return met.loose_cover.known() ? fmt::format("under {}, which nothing holds",
                                                 model::quoted(walk.model, met.loose_cover))
                                   : "within reach";
}

void find_live_test(const Walk& walk, std::vector<Diagnostic>& findings) {
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
        Diagnostic finding =
            finding_at(walk, at,
                       fmt::format("test `{}` is done with {} {}, and {} not made safe", test.name,
                                   model::with_kind(walk.model, met->laid_open),
                                   how_open(walk, *met), item_is(walk, met->item)));
        finding.label = fmt::format("hazard `{}` here", hazard.name);
        finding.why = met->loose_cover.known() ? "a cover that nothing holds keeps no hand off"
                                               : "the device is tried open, under power";
        finding.related.push_back({kind.hazards[met->use].span, "the hazard"});
        mend(walk, at, met->item, finding);
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule live_test;
const Rule live_test{"live-test", "tests", Severity::error,
                     "a test under power with a danger within reach, and no word that it is meant",
                     find_live_test};

} // namespace matchmark::check::rules
