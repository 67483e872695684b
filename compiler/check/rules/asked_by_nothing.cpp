// A measurement, mark, disposal or test that no declaration asks for: nothing would notice if it
// went.
#include "check/trials.hpp"
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::Action;
using model::ActionSort;

std::string what_lacks(const Walk& walk, const Action& action) {
    const model::Item& item = walk.model.item(action.targets.front().ref.item);
    const model::Kind& kind = walk.model.kind(item.kind);
    if (action.sort == ActionSort::mark && item.rare->keep.empty()) {
        return fmt::format("add `keep` to `{}`: what of it must be as before", item.name);
    }
    if (action.sort == ActionSort::dispose && kind.waste.empty()) {
        return fmt::format("add `waste` to a kind of its own for `{}`", item.name);
    }
    if (action.sort != ActionSort::measure)
        return {};
    const bool known = std::any_of(
        item.rare->limits.begin(), item.rare->limits.end(), [&](const model::WearLimit& limit) {
            return action.aspect->empty() || limit.name == *action.aspect;
        });
    return known ? std::string{}
                 : fmt::format("add `limit {} ...` to `{}`", *action.aspect, item.name);
}

void report_asked_by_nothing(const Walk& walk, std::size_t at, std::string message,
                             std::string help, std::vector<Diagnostic>& findings) {
    Diagnostic finding = finding_at(walk, at, std::move(message));
    finding.why = "if a later edit lost it, nothing would notice";
    finding.help = std::move(help);
    findings.push_back(std::move(finding));
}

// Does it prove what the goal promises? When no step does that, the goal is reported, not the test.
bool proves_goal(const Walk& walk, const model::Step& test) {
    const auto& goals = walk.guide().goals;
    return std::any_of(goals.begin(), goals.end(), [&](const Action& goal) {
        return std::any_of(goal.targets.begin(), goal.targets.end(), [&](const auto& target) {
            return bench::proves_item(walk.model, test, target.ref.item);
        });
    });
}

// Does it prove something that a missing line would move? Once that stands there, it is asked for.
bool waits_for_mend(const Walk& walk, const model::Step& test) {
    const auto items = bench::proven_items(walk.bench, test);
    return std::any_of(walk.troubles.begin(), walk.troubles.end(), [&](const Trouble& trouble) {
        return std::any_of(trouble.missing.begin(), trouble.missing.end(),
                           [&](const bench::Act& act) { return among(items, act.item); });
    });
}

// Does it prove a function whose fasteners were undone, the screw of a blade, or by name a joint
// that was parted, or the part that it is on: a leak test?
bool holds_what_was_undone(const Walk& walk, const model::Step& test) {
    const auto items = bench::proven_items(walk.bench, test);
    const auto names = [&](model::ItemId item) {
        const model::Item& tie = walk.model.item(item);
        const bool leaks = walk.model.kind(tie.kind).lets_out;
        return std::any_of(test.proves.begin(), test.proves.end(), [&](const model::Proof& proof) {
            return proof.item == item ||
                   (leaks && proof.item.known() && among(tie.touches, proof.item));
        });
    };
    return std::any_of(walk.events.begin(), walk.events.end(), [&](const Event& event) {
        if (!event.act)
            return false;
        const model::Role role = walk.model.item(event.act->item).role;
        return (role == model::Role::fastener && among(items, event.act->item)) ||
               (model::is_tie(role) && names(event.act->item));
    });
}

// Does its kind ask for it, but not of this reader? That it is worked on at all is reported.
bool is_for_others(const Walk& walk, const model::Step& test) {
    return std::any_of(test.proves.begin(), test.proves.end(), [&](const model::Proof& proof) {
        return proof.item.known() && walk.model.kind_of(proof.item).asks_test &&
               !may_do(walk.guide(), walk.model.kind_of(proof.item));
    });
}

void find_asked_by_nothing(const Walk& walk, std::vector<Diagnostic>& findings) {
    const auto proven = proofs(walk);
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        if (const Action* action = walk.action(walk.events[at])) {
            if (action->targets.empty())
                continue;
            const std::string lack = what_lacks(walk, *action);
            if (lack.empty())
                continue;
            report_asked_by_nothing(
                walk, at,
                fmt::format("nothing declared asks to {} `{}`", action->verb,
                            walk.model.item(action->targets.front().ref.item).name),
                lack, findings);
            continue;
        }
        const bool needed = std::any_of(proven.begin(), proven.end(), [&](const Proven& entry) {
            return entry.by == at || entry.early == at;
        });
        const model::Step& test = walk.step(walk.events[at]);
        if (needed || test.section != model::Section::put_back || proves_goal(walk, test) ||
            waits_for_mend(walk, test) || is_for_others(walk, test) ||
            holds_what_was_undone(walk, test))
            continue;
        report_asked_by_nothing(
            walk, at,
            fmt::format("nothing that the work renews or disturbs asks for test `{}`", test.name),
            "declare the `function` that it proves", findings);
    }
}

} // namespace

extern const Rule asked_by_nothing;
const Rule asked_by_nothing{"asked-by-nothing", "tests", Severity::advice,
                            "a measurement, mark, disposal or test that no declaration asks for",
                            find_asked_by_nothing};

} // namespace matchmark::check::rules
