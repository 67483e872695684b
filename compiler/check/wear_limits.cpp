// Finds the limits that fall due in a walk.
#include "check/wear_limits.hpp"

#include <algorithm>

namespace matchmark::check {

using bench::State;

bool measurable(const Walk& walk, const State& state, model::ItemId item,
                const model::WearLimit& limit) {
    if (limit.when.empty())
        return !bench::in_first_state(walk.bench, state, item);
    return std::all_of(limit.when.begin(), limit.when.end(),
                       [&](const model::Condition& condition) {
                           return bench::holds(walk.bench, state, condition);
                       });
}

namespace {

bool measures(const Walk& walk, std::size_t at, model::ItemId item, const std::string& name) {
    const model::Action* action = walk.action(walk.events[at]);
    if (action == nullptr || action->sort != model::ActionSort::measure)
        return false;
    if (!action->aspect->empty() && *action->aspect != name)
        return false;
    return std::any_of(action->targets.begin(), action->targets.end(),
                       [&](const model::Target& target) { return target.ref.item == item; });
}

bool becomes_measurable(const Walk& walk, std::size_t at, model::ItemId item,
                        const model::WearLimit& limit) {
    return measurable(walk, walk.state_at(at), item, limit) &&
           !measurable(walk, walk.state_at(at - 1), item, limit);
}

// The first point from which the limit is due: it became measurable in the course of the work.
std::optional<std::size_t> due_from(const Walk& walk, model::ItemId item,
                                    const model::WearLimit& limit) {
    for (std::size_t at = 1; at <= walk.events.size(); ++at) {
        if (becomes_measurable(walk, at, item, limit))
            return at;
    }
    return std::nullopt;
}

// The last such point: when the new one is in its place.
std::optional<std::size_t> set_from(const Walk& walk, model::ItemId item,
                                    const model::WearLimit& limit) {
    for (std::size_t at = walk.events.size(); at > 0; --at) {
        if (becomes_measurable(walk, at, item, limit))
            return at;
    }
    return std::nullopt;
}

// An air gap, an end float: between two bounds and in place it is set, and says nothing of wear.
bool is_setting(const model::WearLimit& limit) {
    return limit.limit.least && limit.limit.most && !limit.when.empty();
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

} // namespace

std::vector<DueLimit> unmeasured(const Walk& walk) {
    std::vector<DueLimit> all;
    for (std::uint32_t i = 0; i < walk.model.items.size(); ++i) {
        const model::ItemId item{i};
        if (!walk.bench.exists(item))
            continue;
        for (const model::WearLimit& limit : walk.model.items[i].rare->limits) {
            const bool renewed =
                bench::any_flag(walk.model, walk.end, item, bench::renewed) || is_goal(walk, item);
            const bool set_anew = renewed && is_setting(limit);
            const auto due = set_anew ? set_from(walk, item, limit) : due_from(walk, item, limit);
            if (!due)
                continue;
            bool done = renewed && !set_anew;
            for (std::size_t at = *due; at < walk.events.size() && !done; ++at) {
                done = measures(walk, at, item, limit.name) &&
                       measurable(walk, walk.state_at(at), item, limit);
            }
            if (!done)
                all.push_back({item, &limit, *due});
        }
    }
    return all;
}

} // namespace matchmark::check
