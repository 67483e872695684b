// The guide's goal, which none of its actions reaches.
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::Action;
using model::ActionSort;

// What the walk did as a mend counts: it is reported there.
bool mended(const Walk& walk, const Action& goal, model::ItemId item) {
    const auto is_it = [&](const bench::Act& act) {
        return act.item == item && walk.model.kind_of(item).verbs[act.verb].name == goal.verb;
    };
    const auto in_acts = [&](const std::vector<bench::Act>& acts) {
        return std::any_of(acts.begin(), acts.end(), is_it);
    };
    return std::any_of(walk.troubles.begin(), walk.troubles.end(),
                       [&](const Trouble& trouble) { return in_acts(trouble.missing); }) ||
           std::any_of(walk.left_off.begin(), walk.left_off.end(),
                       [&](const LeftOff& left) { return in_acts(left.acts); });
}

// What is used up, a ring from the box, is renewed by the line that lays the new one.
bool lays_new(const Walk& walk, const Action& goal, const Action& action) {
    return goal.sort == ActionSort::replace && !goal.with.empty() &&
           walk.procedure.resources[goal.with.front().value].sort == model::ResourceSort::supply &&
           std::find(action.with.begin(), action.with.end(), goal.with.front()) !=
               action.with.end();
}

// Those of the members that the goal names which no line reaches, from 1.
std::vector<std::uint16_t> not_reached(const Walk& walk, const Action& goal,
                                       const model::Target& wanted) {
    const std::uint16_t count = walk.model.item(wanted.ref.item).count;
    std::vector<std::uint16_t> left = wanted.ref.members;
    for (std::uint16_t member = 1; wanted.ref.members.empty() && member <= count; ++member)
        left.push_back(member);
    if (mended(walk, goal, wanted.ref.item))
        return {};
    for (const Event& event : walk.events) {
        const Action* action = walk.action(event);
        if (action == nullptr || (action->verb != goal.verb && !lays_new(walk, goal, *action)))
            continue;
        for (const model::Target& target : action->targets) {
            const auto& members = target.ref.members;
            if (target.ref.item != wanted.ref.item)
                continue;
            std::erase_if(left, [&](std::uint16_t member) {
                return members.empty() ||
                       std::find(members.begin(), members.end(), member) != members.end();
            });
        }
    }
    return left;
}

// Some of them were renewed, and others were not: no line can be meant for those alone.
Diagnostic some_not_reached(const Walk& walk, const Action& goal, model::ItemId item,
                            const std::vector<std::uint16_t>& left) {
    std::vector<std::string> numbers;
    for (const std::uint16_t member : left)
        numbers.push_back(std::to_string(member));
    Diagnostic finding;
    finding.message = fmt::format("the goal is to {} {}, and no step does it for {}", goal.verb,
                                  model::with_kind(walk.model, item), model::list(numbers, "and"));
    finding.primary = goal.head;
    finding.label = "promised here";
    finding.why = "the reader expects all of them new";
    finding.help =
        fmt::format("{} the others too, or name in the goal those that are meant", goal.verb);
    return finding;
}

// What is good for one use and goes back used is reported there.
bool reported_as_used(const Walk& walk, model::ItemId item) {
    return std::any_of(walk.troubles.begin(), walk.troubles.end(), [&](const Trouble& trouble) {
        const auto* refusal = std::get_if<bench::Refusal>(&trouble.objection);
        return refusal != nullptr && std::holds_alternative<bench::UsedTwice>(*refusal) &&
               walk.events[trouble.event].act->item == item;
    });
}

// At the last point where the item is off its place, and a line of the author's can stand.
void mend_replace(const Walk& walk, const Action& goal, const model::Target& target,
                  Diagnostic& finding) {
    if (goal.with.empty())
        return;
    const auto& spare = walk.procedure.resources[goal.with.front().value];
    const auto line =
        fmt::format("replace {} with {}", walk.model.item(target.ref.item).name, spare.name);
    for (std::size_t at = walk.events.size() + 1; at-- > 0 && finding.edits.empty();) {
        if (!bench::present(walk.bench, walk.state_at(at), target.ref.item))
            finding.edits = insert_at(walk, at, {line});
    }
    finding.help = finding.edits.empty() ? fmt::format("write `{}` while it is out", line)
                                         : "add this line while it is out";
}

// The last point at which the goal's verb can be done.
void mend_verb(const Walk& walk, const Action& goal, const model::Target& target,
               Diagnostic& finding) {
    const model::Kind& kind = walk.model.kind_of(target.ref.item);
    const model::Verb* verb = model::find_verb(kind, goal.verb);
    if (verb == nullptr)
        return;
    const bench::Act act{
        target.ref.item, static_cast<std::uint16_t>(verb - kind.verbs.data()), {}, true};
    for (std::size_t at = walk.events.size() + 1; at-- > 0;) {
        if (!replay(walk, at, {act}, walk.events.size()))
            continue;
        mend_with(walk, finding, at, {act});
        if (!finding.edits.empty())
            return;
        if (auto edits = insert_at(walk, at, lines_for(walk, {act})); !edits.empty()) {
            finding.edits = std::move(edits);
            finding.help = "add this line";
            return;
        }
    }
}

void find_goal_not_met(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const Action& goal : walk.guide().goals) {
        for (const model::Target& target : goal.targets) {
            if (!walk.bench.exists(target.ref.item) || reported_as_used(walk, target.ref.item))
                continue;
            const auto left = not_reached(walk, goal, target);
            if (left.empty())
                continue;
            if (left.size() < walk.model.item(target.ref.item).count &&
                target.ref.members.empty()) {
                findings.push_back(some_not_reached(walk, goal, target.ref.item, left));
                continue;
            }
            Diagnostic finding;
            finding.message = fmt::format("the goal is to {} {}, and no step does it", goal.verb,
                                          model::with_kind(walk.model, target.ref.item));
            finding.primary = goal.head;
            finding.label = "promised here";
            finding.why = "the reader would take it apart for nothing";
            if (goal.sort == ActionSort::replace) {
                mend_replace(walk, goal, target, finding);
            } else {
                mend_verb(walk, goal, target, finding);
            }
            if (finding.help.empty())
                finding.help = fmt::format("write `{} {}` in a step, or take the goal away",
                                           goal.verb, walk.model.item(target.ref.item).name);
            findings.push_back(std::move(finding));
        }
    }
}

} // namespace

extern const Rule goal_not_met;
const Rule goal_not_met{"goal-not-met", "goal", Severity::error,
                        "a goal that no step of the guide reaches", find_goal_not_met};

} // namespace matchmark::check::rules
