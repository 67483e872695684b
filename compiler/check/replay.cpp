// Runs a stretch of a walk again with something added.
#include "check/walk.hpp"

#include <algorithm>

namespace matchmark::check {

using bench::Act;
using bench::State;

namespace {

// What the walk itself added before the event: mends of refusals, and what was left off.
void do_added(const Walk& walk, State& state, std::size_t event) {
    for (const Trouble& trouble : walk.troubles) {
        if (trouble.mend_at != event)
            continue;
        for (const Act& act : trouble.missing)
            bench::perform(walk.bench, state, act);
    }
    for (const LeftOff& left : walk.left_off) {
        if (left.at != event)
            continue;
        for (const Act& act : left.acts)
            bench::perform(walk.bench, state, act);
    }
}

// False when the event, which was fine in the walk, is refused now.
bool repeat_event(const Walk& walk, State& state, const Event& event) {
    if (event.act) {
        const bool was_fine = !bench::refusal(walk.bench, event.before, *event.act);
        if (was_fine && bench::refusal(walk.bench, state, *event.act))
            return false;
        bench::perform(walk.bench, state, *event.act);
        return true;
    }
    if (const model::Action* action = walk.action(event)) {
        bench::note(walk.bench, state, *action);
        return true;
    }
    const auto& when = walk.step(event).when;
    return std::all_of(when.begin(), when.end(), [&](const model::Condition& condition) {
        return bench::holds(walk.bench, state, condition) ||
               !bench::holds(walk.bench, event.before, condition);
    });
}

} // namespace

std::optional<State> replay(const Walk& walk, std::size_t at, const std::vector<Act>& acts,
                            std::size_t until) {
    State state = walk.state_at(at);
    for (const Act& act : acts) {
        const State before = state;
        if (bench::apply(walk.bench, state, act))
            return std::nullopt;
        if (bench::exposure(walk.bench, before, state, act))
            return std::nullopt;
    }
    for (std::size_t i = at; i < until; ++i) {
        if (i != at)
            do_added(walk, state, i);
        if (!repeat_event(walk, state, walk.events[i]))
            return std::nullopt;
    }
    if (at < until)
        do_added(walk, state, until);
    return state;
}

void patch(Walk& walk, std::size_t at, const std::vector<Act>& acts, std::size_t until) {
    State state = walk.state_at(at);
    for (const Act& act : acts)
        bench::perform(walk.bench, state, act);
    for (std::size_t i = at; i < until; ++i) {
        if (i != at)
            do_added(walk, state, i);
        State before = state;
        repeat_event(walk, state, walk.events[i]);
        walk.events[i].before = std::move(before);
    }
    if (at < until)
        do_added(walk, state, until);
    (until < walk.events.size() ? walk.events[until].before : walk.end) = std::move(state);
}

bool takes_apart(const Walk& walk, const std::vector<Act>& acts) {
    return std::any_of(acts.begin(), acts.end(), [&](const Act& act) {
        const model::Kind& kind = walk.model.kind_of(act.item);
        const model::Verb& verb = kind.verbs[act.verb];
        const model::StateId first = kind.set_first[kind.set_of[verb.to]];
        return model::contains(verb.from, first) && verb.to != first;
    });
}

std::optional<std::size_t> last_left(const Walk& walk, model::ItemId item) {
    for (std::size_t i = walk.events.size(); i-- > 0;) {
        const auto& act = walk.events[i].act;
        if (!act || act->item != item)
            continue;
        const model::Kind& kind = walk.model.kind_of(item);
        const model::Verb& verb = kind.verbs[act->verb];
        if (verb.to != kind.set_first[kind.set_of[verb.to]])
            return i;
    }
    return std::nullopt;
}

} // namespace matchmark::check
