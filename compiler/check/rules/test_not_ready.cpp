// A test that is to be done when the device is not in the state that it asks for, or when what it
// proves is not back.
#include "check/too_early.hpp"
#include "check/trials.hpp"
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// To make it so, what is back would have to come off again, or what is off to go back.
void misplaced(const Walk& walk, std::size_t test, Diagnostic& finding) {
    if (walk.step(walk.events[test]).section != model::Section::put_back) {
        finding.why = "what it asks for is taken apart before it";
        finding.help = "move the test to where it is so, or leave the condition out";
    } else if (walk.guide().derives_put_back) {
        finding.why = "nowhere on the way back does all that it asks for hold at one time";
        finding.help = "take things off in another order, or leave the condition out";
    } else {
        finding.why = "what is back would have to come off again";
        finding.help = "move the test to where it is so, or leave the condition out";
    }
}

// What it is to prove lies on the bench.
void report_not_back(const Walk& walk, std::size_t at, std::vector<model::ItemId> items,
                     std::vector<Diagnostic>& findings) {
    const std::string& name = walk.step(walk.events[at]).name;
    Diagnostic finding = finding_at(walk, at,
                                    fmt::format("test `{}` is done while {} not back", name,
                                                items.size() == 1 ? item_is(walk, items.front())
                                                                  : names(walk, items) + " are"));
    finding.label = "proves nothing here";
    finding.why = "what it proves works only with all of it in its place";
    for (const model::ItemId item : items) {
        if (const auto left = last_left(walk, item); left && *left < at)
            finding.related.push_back({place_of(walk, *left), "taken apart here"});
    }
    for (const model::ItemId source : cut_sources(walk, at))
        items.push_back(source);
    const std::string conditions = how_they_stand(walk, at, items);
    const auto better = better_point(walk, at);
    finding.safe = false; // or it was meant to be done so
    if (better && !walk.guide().derives_put_back) {
        finding.edits = move_step(walk, at, *better);
        finding.help = "move the test to where it is back";
    } else if (!conditions.empty()) {
        finding.edits = add_condition(walk, at, conditions);
        finding.help = "move the test to the put-back, or say that it is done without";
    }
    findings.push_back(std::move(finding));
}

// A test that proves nothing there is told where what it proves is left unproven: `untested`.
bool told_as_untested(const std::vector<Proven>& proven, std::size_t test) {
    return std::any_of(proven.begin(), proven.end(),
                       [&](const Proven& entry) { return !entry.by && entry.early == test; });
}

void find_not_back(const Walk& walk, std::vector<Diagnostic>& findings) {
    std::optional<std::vector<Proven>> proven;
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        if (walk.events[at].action || displaced(walk, walk.step(walk.events[at])) ||
            told_not_ready(walk, at))
            continue;
        auto items = not_back_at(walk, at);
        if (items.empty())
            continue;
        if (!proven)
            proven = proofs(walk);
        if (!told_as_untested(*proven, at))
            report_not_back(walk, at, std::move(items), findings);
    }
}

void find_test_not_ready(const Walk& walk, std::vector<Diagnostic>& findings) {
    find_not_back(walk, findings);
    const ToldAsTooEarly told(walk);
    each_objection<NotReady>(walk, [&](const Trouble& trouble, const NotReady& reason) {
        if (told.covers(trouble))
            return;
        const Event& event = walk.events[trouble.event];
        const model::Action* measure = walk.action(event);
        const std::string wanted =
            model::states_in_words(walk.model.kind_of(reason.item), reason.states);
        const std::string what = measure != nullptr
                                     ? "this measurement"
                                     : fmt::format("test `{}`", walk.step(event).name);
        Diagnostic finding = refused(walk, trouble,
                                     fmt::format("{} asks for `{}` {}, which it is not here", what,
                                                 walk.model.item(reason.item).name, wanted));
        finding.label = "cannot be done here";
        finding.why = fmt::format("nothing before it leaves {} {}",
                                  model::with_kind(walk.model, reason.item), wanted);
        if (measure == nullptr && trouble.missing.empty())
            misplaced(walk, trouble.event, finding);
        finding.related.push_back({reason.condition, "the condition"});
        findings.push_back(std::move(finding));
    });
}

} // namespace

extern const Rule test_not_ready;
const Rule test_not_ready{
    "test-not-ready", "tests", Severity::error,
    "a test or measurement where its condition does not hold, or what it proves is out",
    find_test_not_ready};

} // namespace matchmark::check::rules
