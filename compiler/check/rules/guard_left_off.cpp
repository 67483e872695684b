// A guard, or a joint that has to be proved, that does not go back.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// What keeps hands off, or a fault from doing harm, is thrown away as little as left off; an old
// joint may be thrown away.
bool must_go_back(const model::Kind& kind, const model::Action& action) {
    if (action.sort == model::ActionSort::scrap)
        return kind.guards || kind.protects;
    return action.sort == model::ActionSort::leave_off &&
           (kind.guards || kind.protects || kind.asks_test);
}

Diagnostic left_off(const Walk& walk, std::size_t at, const model::Target& target) {
    const model::Kind& kind = walk.model.kind_of(target.ref.item);
    Diagnostic finding = finding_at(
        walk, at, fmt::format("{} is left off", model::with_kind(walk.model, target.ref.item)));
    finding.primary = target.ref.span;
    if (kind.guards) {
        finding.label = "keeps hands off no more";
        finding.why = "whoever runs the machine next does not know that it is bare";
        finding.help = "fit it again; where another guard takes its place, write "
                       "`allow guard-left-off` with the reason";
    } else if (kind.protects) {
        finding.label = "protects nobody any more";
        finding.why = "the next fault starts a fire or a burst, and nothing stops it";
        finding.help = "fit it again, or a new one; where another one takes its place, write "
                       "`allow guard-left-off` with the reason";
    } else {
        finding.label = "does its work no more";
        finding.why = "its kind asks for a test of it, and whoever uses the device relies on it";
        finding.help = "make it again; where another one takes its place, write "
                       "`allow guard-left-off` with the reason";
    }
    return finding;
}

void find_guard_left_off(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const model::Action* action = walk.action(walk.events[at]);
        if (action == nullptr)
            continue;
        for (const model::Target& target : action->targets) {
            if (walk.bench.exists(target.ref.item) &&
                must_go_back(walk.model.kind_of(target.ref.item), *action))
                findings.push_back(left_off(walk, at, target));
        }
    }
}

} // namespace

extern const Rule guard_left_off;
const Rule guard_left_off{
    "guard-left-off", "hazard", Severity::error,
    "a guard, what protects, or a joint whose kind asks for a test, kept from going back",
    find_guard_left_off};

} // namespace matchmark::check::rules
