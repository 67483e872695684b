// Runs a procedure over the bench, once for each variant.
#include "check/walk.hpp"

#include <algorithm>

namespace matchmark::check {

using bench::Act;
using bench::State;
using model::Action;
using model::ActionSort;
using model::StateSet;
using model::Step;

namespace {

constexpr int most_objections = 24; // to one act; then it is forced

bool in_variant(const Walk& walk, model::VariantMask mask) {
    return ((mask >> walk.bench.variant) & 1U) != 0;
}

void list_events(Walk& walk) {
    const auto& steps = walk.procedure.steps;
    for (std::size_t s = 0; s < steps.size(); ++s) {
        if (!in_variant(walk, steps[s].variants))
            continue;
        if (steps[s].is_test)
            walk.events.push_back({s, std::nullopt, 0, std::nullopt, {}});
        for (std::size_t a = 0; a < steps[s].actions.size(); ++a) {
            const Action& action = steps[s].actions[a];
            if (!in_variant(walk, action.variants))
                continue;
            if (action.sort != ActionSort::verb) {
                walk.events.push_back({s, a, 0, std::nullopt, {}});
                continue;
            }
            for (std::size_t t = 0; t < action.targets.size(); ++t) {
                if (!walk.bench.exists(action.targets[t].ref.item))
                    continue;
                Act act =
                    bench::act_of(walk.model, walk.procedure.resources, action, action.targets[t]);
                walk.events.push_back({s, a, t, std::move(act), {}});
            }
        }
    }
}

// The line that did, earlier, by way of a mend, what this act now finds done.
bool done_by_mend(Walk& walk, const Act& act, Span line) {
    for (auto trouble = walk.troubles.rbegin(); trouble != walk.troubles.rend(); ++trouble) {
        for (const Act& missing : trouble->missing) {
            if (missing.item != act.item || missing.verb != act.verb)
                continue;
            trouble->done_later.push_back(line);
            return true;
        }
    }
    return false;
}

class Runner {
public:
    explicit Runner(Walk& walk) : walk_(walk), state_(bench::assembled(walk.bench)) {}

    void run() {
        for (std::size_t i = 0; i < walk_.events.size(); ++i) {
            walk_.events[i].before = state_;
            if (walk_.events[i].act) {
                do_act(i);
            } else if (walk_.events[i].action) {
                do_note(i);
            } else {
                do_test(i);
            }
        }
        walk_.end = state_;
    }

private:
    // Records the objection and does what was missing; false when nothing on the bench helps.
    bool overcome(std::size_t event, Objection objection, std::vector<Act> missing) {
        const bool helped = !missing.empty();
        for (const Act& act : missing)
            bench::perform(walk_.bench, state_, act);
        walk_.troubles.push_back({event, std::move(objection), std::move(missing), {}});
        walk_.events[event].before = state_;
        return helped;
    }

    std::optional<Objection> objection_to(const Act& act, std::size_t event,
                                          std::vector<Act>& missing) {
        const auto wish = wish_from(walk_, event);
        if (const auto refused = bench::refusal(walk_.bench, state_, act)) {
            missing = bench::missing_for(walk_.bench, state_, act, *refused, wish);
            return Objection{*refused};
        }
        State after = state_;
        bench::perform(walk_.bench, after, act);
        const auto met = bench::exposure(walk_.bench, state_, after, act);
        if (!met)
            return std::nullopt;
        const auto& use = walk_.model.kind_of(met->item).hazards[met->use];
        if (auto acts = bench::bring_to(walk_.bench, state_, met->item, use.safe, wish)) {
            missing = std::move(*acts);
        }
        return Objection{*met};
    }

    void do_act(std::size_t event) {
        const Act act = *walk_.events[event].act;
        for (int i = 0; i < most_objections; ++i) {
            std::vector<Act> missing;
            auto objection = objection_to(act, event, missing);
            if (!objection)
                break;
            const auto* refused = std::get_if<bench::Refusal>(&*objection);
            const bool wrong =
                refused != nullptr && std::holds_alternative<bench::WrongState>(*refused);
            const Action* action = walk_.action(walk_.events[event]);
            if (wrong && done_by_mend(walk_, act, action->line))
                return;
            if (!overcome(event, std::move(*objection), std::move(missing)))
                break;
        }
        force(act);
    }

    // As if it had been possible: also when nobody could say how.
    void force(Act act) {
        act.supplied = true;
        bench::perform(walk_.bench, state_, act);
    }

    void do_note(std::size_t event) {
        const Action& action = *walk_.action(walk_.events[event]);
        if (action.sort == ActionSort::replace) {
            for (const auto& target : action.targets) {
                if (walk_.bench.exists(target.ref.item))
                    take_out(event, target.ref.item);
            }
        }
        bench::note(walk_.bench, state_, action);
    }

    void take_out(std::size_t event, model::ItemId item) {
        if (!bench::present(walk_.bench, state_, item))
            return;
        const model::Kind& kind = walk_.model.kind_of(item);
        StateSet out = 0;
        for (std::size_t i = 0; i < kind.states.size(); ++i) {
            const auto state = static_cast<model::StateId>(i);
            if (kind.set_of[i] == 0 && !model::contains(kind.present, state))
                out |= model::in_set(state);
        }
        auto acts = bench::bring_to(walk_.bench, state_, item, out, wish_from(walk_, event));
        overcome(event, StillInPlace{}, acts ? std::move(*acts) : std::vector<Act>{});
    }

    void do_test(std::size_t event) {
        const Step& test = walk_.step(walk_.events[event]);
        for (const model::Condition& condition : test.when) {
            if (bench::holds(walk_.bench, state_, condition))
                continue;
            auto acts = bench::bring_to(walk_.bench, state_, condition.item.item,
                                        model::in_set(condition.state), wish_from(walk_, event));
            overcome(event, NotReady{condition}, acts ? std::move(*acts) : std::vector<Act>{});
        }
    }

    Walk& walk_;
    State state_;
};

} // namespace

Walk walk(const SourceMap& sources, const model::Model& model, const model::Procedure& procedure,
          unsigned variant) {
    Walk record{sources, model, procedure, {&model, variant}, {}, {}, {}};
    list_events(record);
    Runner(record).run();
    return record;
}

bench::Wish wish_from(const Walk& walk, std::size_t from) {
    return [&walk, from](std::uint32_t slot) -> StateSet {
        for (std::size_t i = from; i < walk.events.size(); ++i) {
            if (!walk.events[i].act)
                continue;
            const Act& act = *walk.events[i].act;
            const model::Item& item = walk.model.item(act.item);
            const model::Kind& kind = walk.model.kind(item.kind);
            const model::Verb& verb = kind.verbs[act.verb];
            const auto sets = static_cast<std::uint32_t>(kind.set_count());
            if (slot < item.first_slot || slot >= item.first_slot + item.count * sets)
                continue;
            if ((slot - item.first_slot) % sets != kind.set_of[verb.to])
                continue;
            return verb.from;
        }
        return 0;
    };
}

namespace {

void do_missing(const Walk& walk, State& state, std::size_t event) {
    for (const Trouble& trouble : walk.troubles) {
        if (trouble.event != event)
            continue;
        for (const Act& act : trouble.missing)
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
    if (const Action* action = walk.action(event)) {
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

std::optional<State> replay(const Walk& walk, std::size_t at, const std::vector<Act>& acts) {
    State state = walk.state_at(at);
    for (const Act& act : acts) {
        const State before = state;
        if (bench::apply(walk.bench, state, act))
            return std::nullopt;
        if (bench::exposure(walk.bench, before, state, act))
            return std::nullopt;
    }
    for (std::size_t i = at; i < walk.events.size(); ++i) {
        if (i != at)
            do_missing(walk, state, i);
        if (!repeat_event(walk, state, walk.events[i]))
            return std::nullopt;
    }
    if (at < walk.events.size())
        do_missing(walk, state, walk.events.size());
    return state;
}

void patch(Walk& walk, std::size_t at, const std::vector<Act>& acts) {
    State state = walk.state_at(at);
    for (const Act& act : acts)
        bench::perform(walk.bench, state, act);
    walk.troubles.push_back({at, StillInPlace{}, acts, {}});
    for (std::size_t i = at; i < walk.events.size(); ++i) {
        if (i != at)
            do_missing(walk, state, i);
        State before = std::move(state);
        state = before;
        repeat_event(walk, state, walk.events[i]);
        walk.events[i].before = std::move(before);
    }
    if (at < walk.events.size())
        do_missing(walk, state, walk.events.size());
    walk.end = std::move(state);
}

} // namespace matchmark::check
