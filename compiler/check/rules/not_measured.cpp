// A wear limit from the book that the work lays open, and nobody measures.
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace matchmark::check::rules {

namespace {

using bench::State;

// May it be measured in this state: as `when` says, or else while the item is off its place.
bool measurable(const Walk& walk, const State& state, model::ItemId item,
                const model::WearLimit& limit) {
    if (limit.when.empty())
        return !bench::in_first_state(walk.bench, state, item);
    return std::all_of(limit.when.begin(), limit.when.end(),
                       [&](const model::Condition& condition) {
                           return bench::holds(walk.bench, state, condition);
                       });
}

bool measures(const Walk& walk, std::size_t at, model::ItemId item, const std::string& name) {
    const model::Action* action = walk.action(walk.events[at]);
    if (action == nullptr || action->sort != model::ActionSort::measure)
        return false;
    if (!action->aspect.empty() && action->aspect != name)
        return false;
    return std::any_of(action->targets.begin(), action->targets.end(),
                       [&](const model::Target& target) { return target.ref.item == item; });
}

// The first point from which the limit is due: it became measurable in the course of the work.
std::optional<std::size_t> due_from(const Walk& walk, model::ItemId item,
                                    const model::WearLimit& limit) {
    for (std::size_t at = 1; at <= walk.events.size(); ++at) {
        if (measurable(walk, walk.state_at(at), item, limit) &&
            !measurable(walk, walk.state_at(at - 1), item, limit)) {
            return at;
        }
    }
    return std::nullopt;
}

bool is_goal(const Walk& walk, model::ItemId item) {
    const auto& goals = walk.guide().goals;
    return std::any_of(goals.begin(), goals.end(), [&](const model::Action& goal) {
        if (goal.sort != model::ActionSort::replace)
            return false;
        return std::any_of(goal.targets.begin(), goal.targets.end(),
                           [&](const model::Target& target) { return target.ref.item == item; });
    });
}

void report(const Walk& walk, std::vector<Diagnostic>& findings, model::ItemId item,
            const model::WearLimit& limit, std::size_t due) {
    Diagnostic finding = finding_at(
        walk, due - 1,
        fmt::format("`{}` of {} is not measured", limit.name, model::with_kind(walk.model, item)));
    if (const auto* action = walk.action(walk.events[due - 1]))
        finding.primary = action->head;
    finding.related.clear();
    finding.label = "can be measured from here on";
    finding.why = fmt::format("the book asks for {}", to_text(limit.limit));
    finding.related.push_back({limit.span, "the limit"});
    std::string line = fmt::format("measure {} {} {}", walk.model.item(item).name, limit.name,
                                   to_text(limit.limit));
    line += with_unused_tools(walk);
    const auto spares = unused_for(walk, item);
    if (!spares.empty())
        line +=
            fmt::format(", else replace {} with {}", walk.model.item(item).name, spares.front());
    for (std::size_t at = walk.events.size() + 1; at-- > due;) {
        if (!measurable(walk, walk.state_at(at), item, limit))
            continue;
        finding.edits = insert_at(walk, at, {line});
        finding.help =
            finding.edits.empty() ? fmt::format("add `{}` to a step", line) : "add this line";
        if (!finding.edits.empty())
            break;
    }
    findings.push_back(std::move(finding));
}

void find(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::uint32_t i = 0; i < walk.model.items.size(); ++i) {
        const model::ItemId item{i};
        if (!walk.bench.exists(item))
            continue;
        for (const model::WearLimit& limit : walk.model.items[i].limits) {
            const auto due = due_from(walk, item, limit);
            if (!due)
                continue;
            bool done = false;
            for (std::size_t at = *due; at < walk.events.size() && !done; ++at) {
                done = measures(walk, at, item, limit.name) &&
                       measurable(walk, walk.state_at(at), item, limit);
            }
            // What is renewed, or was to be, need not be measured.
            const bool renewed =
                bench::any_flag(walk.model, walk.end, item, bench::renewed) || is_goal(walk, item);
            if (!done && !renewed) {
                report(walk, findings, item, limit, *due);
            }
        }
    }
}

} // namespace

extern const Rule not_measured;
const Rule not_measured{
    "not-measured", "needs", Severity::error,
    "a limit declared on an item that the work lays open, and that is not measured", find};

} // namespace matchmark::check::rules
