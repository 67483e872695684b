// Looks for safety from where the walk stands.
#include "check/to_safety.hpp"

#include "bench/power.hpp"
#include "bench/recharge.hpp"

#include <algorithm>

namespace matchmark::check {

using bench::Act;
using bench::State;
using model::StateSet;

namespace {

// The supply of the item that is on again by the guide's own way back, written before the event.
std::optional<model::ItemId> on_again(const Walk& walk, const bench::State& state,
                                      std::size_t event, model::ItemId item) {
    for (const model::ItemId source : bench::supplies_of(walk.bench, item)) {
        if (!bench::is_live(walk.bench, state, source))
            continue;
        const auto& through = walk.model.item(source).through;
        for (std::size_t at = event; at-- > 0;) {
            const Event& earlier = walk.events[at];
            if (walk.step(earlier).section != model::Section::put_back)
                break;
            if (earlier.act &&
                (earlier.act->item == source ||
                 std::find(through.begin(), through.end(), earlier.act->item) != through.end()))
                return source;
        }
    }
    return std::nullopt;
}

// On the way home a plug that is parted to make safe what a cell charged is joined again, when
// no later line does so.
void join_again(const Walk& walk, const State& state, std::size_t event,
                std::vector<Act>& missing) {
    const model::Section section = walk.step(walk.events[event]).section;
    const std::size_t count = missing.size();
    State after = state;
    for (const Act& act : missing)
        bench::perform(walk.bench, after, act);
    for (std::size_t i = count; section == model::Section::put_back && i-- > 0;) {
        const model::Item& item = walk.model.item(missing[i].item);
        const auto later = walk.events.begin() + static_cast<std::ptrdiff_t>(event);
        const bool moved_later = std::any_of(later, walk.events.end(), [&](const Event& other) {
            return other.act && other.act->item == missing[i].item;
        });
        if (item.role != model::Role::connector || moved_later ||
            !bench::charged_by(walk.bench, missing[i].item).empty() ||
            !bench::in_first_state(walk.bench, state, missing[i].item))
            continue;
        const auto back =
            bench::bring_to(walk.bench, after, missing[i].item,
                            model::in_set(walk.model.kind_of(missing[i].item).set_first.front()),
                            [](std::uint32_t) -> StateSet { return 0; });
        if (!back)
            continue;
        for (const Act& act : *back)
            bench::perform(walk.bench, after, act);
        missing.insert(missing.end(), back->begin(), back->end());
    }
}

} // namespace

std::vector<Span> made_safe_later(const Walk& walk, std::size_t event, model::ItemId item,
                                  StateSet safe) {
    for (std::size_t at = event; at < walk.events.size(); ++at) {
        const model::Action* action = walk.action(walk.events[at]);
        if (action != nullptr && !action->derived && walk.events[at].act &&
            walk.events[at].act->item == item &&
            bench::made_safe(walk.bench, walk.state_at(at + 1), item, safe))
            return {action->line};
    }
    return {};
}

bool meets_danger(const Walk& walk, State state, const std::vector<Act>& acts) {
    State next = state;
    return std::any_of(acts.begin(), acts.end(), [&](const Act& act) {
        if (bench::refusal(walk.bench, state, act))
            return true;
        bench::perform(walk.bench, next, act);
        const bool met = bench::exposure(walk.bench, state, next, act, walk.dangers).has_value();
        state = next;
        return met;
    });
}

std::vector<Act> acts_to_safety(const Walk& walk, const State& state, std::size_t event,
                                const bench::Exposure& met) {
    const auto wish = wish_from(walk, event);
    std::vector<Act> acts;
    State after = state;
    const auto go_on = [&](std::optional<std::vector<Act>> found) {
        for (const Act& act : found ? *found : std::vector<Act>{}) {
            bench::perform(walk.bench, after, act);
            acts.push_back(act);
        }
        return found.has_value();
    };
    if (const auto source = on_again(walk, state, event, met.item)) {
        const model::Kind& kind = walk.model.kind_of(*source);
        go_on(bench::bring_to(walk.bench, after, *source,
                              model::states_of_set(kind, 0) & ~kind.live, wish));
    }
    const StateSet safe = walk.model.kind_of(met.item).hazards[met.use].safe;
    if (!go_on(bench::bring_to(walk.bench, after, met.item, safe, wish)))
        return {};
    join_again(walk, state, event, acts);
    return acts;
}

} // namespace matchmark::check
