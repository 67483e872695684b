// Runs a stretch of a walk again with something added.
#include "check/walk.hpp"

#include "bench/recharge.hpp"
#include "check/trials.hpp"

#include <algorithm>
#include <utility>

namespace matchmark::check {

using bench::Act;
using bench::State;

namespace {

// A stretch of the walk done once more, otherwise.
class Again {
public:
    Again(const Walk& walk, State state) : walk_(walk), state_(std::move(state)) {}

    [[nodiscard]] const State& state() const { return state_; }
    // The items that may have changed since this was last asked.
    std::vector<model::ItemId> changed() { return std::exchange(changed_, {}); }

    void perform(const Act& act) {
        bench::perform(walk_.bench, state_, act);
        changed_.push_back(act.item);
        for (const model::ItemId charged : bench::charged_by(walk_.bench, act.item))
            changed_.push_back(charged);
    }

    // What the walk itself added before the event: mends of refusals, and what was left off.
    void do_added(std::size_t event) {
        for (const Trouble& trouble : walk_.troubles) {
            if (trouble.mend_at == event)
                perform_all(trouble.missing);
        }
        for (const LeftOff& left : walk_.left_off) {
            if (left.at == event)
                perform_all(left.acts);
        }
    }

    // Is the event refused now, though it was fine in the walk?
    [[nodiscard]] bool spoils(const Event& event) const {
        if (event.act) {
            return bench::refusal(walk_.bench, state_, *event.act) &&
                   !bench::refusal(walk_.bench, walk_.before(event), *event.act);
        }
        const auto& when = walk_.step(event).when;
        return !event.action &&
               std::any_of(when.begin(), when.end(), [&](const model::Condition& condition) {
                   return !bench::holds(walk_.bench, state_, condition) &&
                          bench::holds(walk_.bench, walk_.before(event), condition);
               });
    }

    void repeat(const Event& event) {
        const model::Action* action = walk_.action(event);
        if (event.act) {
            perform(*event.act);
        } else if (action != nullptr) {
            bench::note(walk_.bench, state_, *action);
            for (const model::Target& target : action->targets)
                changed_.push_back(target.ref.item);
        } else if (!displaced(walk_, walk_.step(event))) {
            for (const model::ItemId item : run_test(walk_, state_, walk_.step(event)))
                changed_.push_back(item);
        }
    }

private:
    void perform_all(const std::vector<Act>& acts) {
        for (const Act& act : acts)
            perform(act);
    }

    const Walk& walk_;
    State state_;
    std::vector<model::ItemId> changed_;
};

} // namespace

std::optional<State> replay(const Walk& walk, std::size_t at, const std::vector<Act>& acts,
                            std::size_t until) {
    State state = walk.state_at(at);
    for (const Act& act : acts) {
        const State before = state;
        if (bench::apply(walk.bench, state, act))
            return std::nullopt;
        if (bench::exposure(walk.bench, before, state, act, walk.dangers))
            return std::nullopt;
    }
    Again again(walk, std::move(state));
    for (std::size_t i = at; i < until; ++i) {
        if (i != at)
            again.do_added(i);
        if (again.spoils(walk.events[i]))
            return std::nullopt;
        again.repeat(walk.events[i]);
    }
    if (at < until)
        again.do_added(until);
    return again.state();
}

void patch(Walk& walk, std::size_t at, const std::vector<Act>& acts, std::size_t until) {
    Again again(walk, walk.state_at(at));
    for (const Act& act : acts)
        again.perform(act);
    for (std::size_t i = at; i < until; ++i) {
        if (i != at)
            again.do_added(i);
        walk.history.record(i, walk.model, again.state(), again.changed());
        again.repeat(walk.events[i]);
    }
    if (at < until)
        again.do_added(until);
    walk.history.record(until, walk.model, again.state(), again.changed());
    if (until == walk.events.size())
        walk.end = again.state();
}

} // namespace matchmark::check
