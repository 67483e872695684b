// Runs a procedure over the bench, once for each variant.
#include "check/walk.hpp"

#include "bench/recharge.hpp"
#include "check/done_again.hpp"
#include "check/events.hpp"
#include "check/joined_troubles.hpp"
#include "check/left_off.hpp"
#include "check/to_safety.hpp"
#include "check/trials.hpp"

#include <algorithm>
#include <numeric>

namespace matchmark::check {

using bench::Act;
using bench::State;
using model::Action;
using model::ActionSort;
using model::StateId;
using model::StateSet;

namespace {

constexpr int most_objections = 24; // to one act; then it is forced

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
    explicit Runner(Walk& walk) : walk_(walk), dangers_(walk.dangers) {
        walk_.history.start(dangers_.start);
        go_on_from(dangers_.start);
    }

    void run() {
        for (std::size_t i = 0; i < walk_.events.size(); ++i) {
            record(i);
            if (walk_.events[i].act) {
                do_act(i);
            } else if (walk_.events[i].action) {
                do_note(i);
            } else {
                do_test(i);
            }
        }
        record(walk_.events.size());
        walk_.end = state_;
    }

private:
    void record(std::size_t event) {
        walk_.history.record(event, walk_.model, state_, changed_);
        changed_.clear();
    }

    void perform(const Act& act) {
        bench::perform(walk_.bench, state_, act);
        note_change(act.item);
        for (const model::ItemId charged : bench::charged_by(walk_.bench, act.item))
            note_change(charged);
    }

    void note_change(model::ItemId id) {
        changed_.push_back(id);
        bench::copy_item(walk_.model, id, state_, next_);
        if (walk_.model.kind_of(id).hazards.empty())
            return;
        auto& items = dangers_.items;
        const auto at = std::lower_bound(items.begin(), items.end(), id);
        const bool listed = at != items.end() && *at == id;
        const bool dangerous = bench::is_dangerous(walk_.bench, state_, id);
        if (dangerous && !listed)
            items.insert(at, id);
        if (!dangerous && listed)
            items.erase(at);
    }

    void go_on_from(const State& state) {
        state_ = next_ = state;
        changed_.clear();
        dangers_.items = walk_.dangers.items;
        std::erase_if(dangers_.items, [&](model::ItemId id) {
            return !bench::is_dangerous(walk_.bench, state_, id);
        });
    }

    // Records the objection and does what was missing; false when nothing on the bench helps.
    bool overcome(std::size_t event, Objection objection, std::vector<Act> missing) {
        const bool helped = !missing.empty();
        for (const Act& act : missing)
            perform(act);
        if (!helped || !echo(event, missing)) {
            const bool reversed = helped && reverses_swapped(event);
            walk_.troubles.push_back(
                {event, std::move(objection), std::move(missing), {}, event, reversed});
        }
        record(event);
        return helped;
    }

    // The derived way back lacks what the way in lacked: reported there.
    [[nodiscard]] bool echo(std::size_t event, const std::vector<Act>& missing) const {
        return walk_.step(walk_.events[event]).section == model::Section::put_back &&
               std::all_of(missing.begin(), missing.end(),
                           [&](const Act& act) { return moved_by_walk(walk_, act.item); });
    }

    // On the way in it was done too late, as was told there: reversed, it comes too early.
    [[nodiscard]] bool reverses_swapped(std::size_t event) const {
        const Action* action = walk_.action(walk_.events[event]);
        if (action == nullptr || !action->derived || !walk_.events[event].act)
            return false;
        return std::any_of(
            walk_.troubles.begin(), walk_.troubles.end(), [&](const Trouble& trouble) {
                return !trouble.done_later.empty() &&
                       std::any_of(trouble.missing.begin(), trouble.missing.end(),
                                   [&](const Act& act) {
                                       return act.item == walk_.events[event].act->item;
                                   });
            });
    }

    std::optional<Objection> objection_to(const Act& act, std::size_t event,
                                          std::vector<Act>& missing) {
        const auto wish = wish_from(walk_, event);
        if (const auto refused = bench::refusal(walk_.bench, state_, act)) {
            missing = bench::missing_for(walk_.bench, state_, act, *refused, wish);
            if (const auto* live = std::get_if<bench::StillLive>(&*refused))
                make_source_safe(event, act, *live, missing);
            return Objection{*refused};
        }
        if (dangers_.items.empty())
            return std::nullopt;
        bench::perform(walk_.bench, next_, act);
        auto met = bench::exposure(walk_.bench, state_, next_, act, dangers_);
        if (met && shuts_after_trial(walk_, event, next_, *met))
            met = std::nullopt;
        bench::copy_item(walk_.model, act.item, state_, next_);
        for (const model::ItemId charged : bench::charged_by(walk_.bench, act.item))
            bench::copy_item(walk_.model, charged, state_, next_);
        if (!met)
            return std::nullopt;
        missing = acts_to_safety(walk_, state_, event, *met);
        return Objection{*met};
    }

    // What may be set going is not only switched off before hands are on it: its supply is locked
    // off and proved, as far as its kind asks for that.
    void make_source_safe(std::size_t event, const Act& act, const bench::StillLive& live,
                          std::vector<Act>& missing) {
        const auto& hazards = walk_.model.kind_of(live.source).hazards;
        const auto& source = walk_.model.item(live.source);
        if (hazards.empty() || !among(source.feeding->drives, live.fed))
            return;
        auto all = acts_to_safety(walk_, state_, event, {live.source, 0, live.fed, {}});
        State then = state_;
        for (const Act& step : all)
            bench::perform(walk_.bench, then, step);
        if (!all.empty() && !bench::refusal(walk_.bench, then, act))
            missing = std::move(all);
    }

    struct Want {
        model::ItemId item;
        StateSet states = 0;
    };

    // To do it now, something would have to come off again: it should have been done earlier. Finds
    // the last point where it still could, and does it there.
    template <class Settled>
    bool done_earlier(std::size_t event, const std::vector<Want>& wants, Settled settled) {
        const bench::Wish no_wish = [](std::uint32_t) -> StateSet { return 0; };
        for (std::size_t at = event; at-- > 0;) {
            State state = walk_.state_at(at);
            std::vector<Act> acts;
            for (const Want& want : wants) {
                const auto found =
                    bench::bring_to(walk_.bench, state, want.item, want.states, no_wish);
                if (!found || takes_apart(walk_, *found))
                    break;
                for (const Act& act : *found)
                    bench::perform(walk_.bench, state, act);
                acts.insert(acts.end(), found->begin(), found->end());
                const auto then = acts.empty() ? std::nullopt : replay(walk_, at, acts, event);
                if (!then || !settled(*then))
                    continue;
                add_left_off(at, wants.front().item, acts);
                patch(walk_, at, acts, event);
                go_on_from(walk_.state_at(event));
                return true;
            }
        }
        return false;
    }

    void add_left_off(std::size_t at, model::ItemId item, const std::vector<Act>& acts) {
        State after = walk_.state_at(at);
        if (walk_.events[at].act)
            bench::perform(walk_.bench, after, *walk_.events[at].act);
        const auto reason = bench::refusal(walk_.bench, after, acts.front());
        const bool closed = reason && std::holds_alternative<bench::OutOfReach>(*reason);
        walk_.left_off.push_back({at, closed, {item}, acts});
    }

    bool seated_earlier(std::size_t event, const Act& act, const bench::NotSeated& reason) {
        std::vector<Want> wants;
        for (const auto part : bench::innermost_first(walk_.model, reason.parts)) {
            wants.push_back({part, model::in_set(walk_.model.kind_of(part).set_first.front())});
        }
        return done_earlier(event, wants, [&](const State& then) {
            return !bench::refusal(walk_.bench, then, act);
        });
    }

    void do_act(std::size_t event) {
        const Act act = *walk_.events[event].act;
        for (int i = 0; i < most_objections; ++i) {
            std::vector<Act> missing;
            auto objection = objection_to(act, event, missing);
            if (!objection) {
                perform(act);
                return;
            }
            const auto* refused = std::get_if<bench::Refusal>(&*objection);
            const bool wrong =
                refused != nullptr && std::holds_alternative<bench::WrongState>(*refused);
            const Action* action = walk_.action(walk_.events[event]);
            if (wrong && (done_by_mend(walk_, act, action->line) ||
                          goes_over(walk_, event, std::get<bench::WrongState>(*refused))))
                return;
            const auto* apart =
                refused != nullptr ? std::get_if<bench::NotSeated>(refused) : nullptr;
            const bool reopens = missing.empty() || takes_apart(walk_, missing);
            if (apart != nullptr && reopens && seated_earlier(event, act, *apart))
                continue;
            if (wrong && missing.empty() && undone_earlier(event, act, *objection))
                continue;
            if ((reopens || undoes_what_goes_on(walk_, event, missing)) &&
                moved_up(event, act, *objection))
                return;
            if (cut_earlier(event, *objection, missing))
                continue;
            if (!overcome(event, std::move(*objection), std::move(missing)))
                break;
        }
        force(act);
    }

    // It is already so, though nothing before has done it: then what leads away from it is missing,
    // at the last point where it could be done.
    bool undone_earlier(std::size_t event, const Act& act, const Objection& objection) {
        for (std::size_t i = 0; i < event; ++i) {
            const auto& earlier = walk_.events[i].act;
            if (earlier && earlier->item == act.item && earlier->verb == act.verb)
                return false;
        }
        for (const std::size_t at : where_undone(event, act)) {
            if (undone_at(at, event, act, objection))
                return true;
        }
        return false;
    }

    // On the way in, or else nearest to the act. A source is made safe before anything else.
    [[nodiscard]] std::vector<std::size_t> where_undone(std::size_t event, const Act& act) const {
        std::vector<std::size_t> places(event + 1);
        std::iota(places.rbegin(), places.rend(), std::size_t{0});
        const auto way_in =
            std::stable_partition(places.begin(), places.end(), [&](std::size_t at) {
                return walk_.step(walk_.events[at]).section != model::Section::put_back;
            });
        if (walk_.model.item(act.item).role == model::Role::energy)
            std::reverse(places.begin(), way_in);
        return places;
    }

    bool undone_at(std::size_t at, std::size_t event, const Act& act, const Objection& objection) {
        const StateSet from = walk_.model.kind_of(act.item).verbs[act.verb].from;
        const bench::Wish no_wish = [](std::uint32_t) -> StateSet { return 0; };
        const auto acts = bench::bring_to(walk_.bench, walk_.state_at(at), act.item, from, no_wish);
        const bool alone = acts && !acts->empty() &&
                           std::all_of(acts->begin(), acts->end(),
                                       [&](const Act& step) { return step.item == act.item; });
        const auto then = alone ? replay(walk_, at, *acts, event) : std::nullopt;
        if (!then || bench::refusal(walk_.bench, *then, act))
            return false;
        patch(walk_, at, *acts, event);
        walk_.troubles.push_back({event, objection, *acts, {}, at});
        go_on_from(walk_.state_at(event));
        return true;
    }

    // What is in its way came back before it: the line of the way back belongs before that.
    bool moved_up(std::size_t event, const Act& act, const Objection& objection) {
        const auto* refused = std::get_if<bench::Refusal>(&objection);
        const Action& action = *walk_.action(walk_.events[event]);
        const model::Kind& kind = walk_.model.kind_of(act.item);
        const StateId to = kind.verbs[act.verb].to;
        if (refused == nullptr || std::holds_alternative<bench::WrongState>(*refused) ||
            walk_.step(walk_.events[event]).section != model::Section::put_back ||
            (to != kind.set_first[kind.set_of[to]] && !model::contains(kind.may_end, to)) ||
            action.derived || action.targets.size() != 1)
            return false;
        for (std::size_t at = event; at-- > 0;) {
            const auto then = bench::refusal(walk_.bench, walk_.state_at(at), act)
                                  ? std::nullopt
                                  : replay(walk_, at, {act}, event);
            if (!then)
                continue;
            const Action* before = walk_.action(walk_.events[at]);
            if (before != nullptr && before->derived)
                return false;
            patch(walk_, at, {act}, event);
            walk_.troubles.push_back({event, objection, {act}, {action.line}, at});
            go_on_from(walk_.state_at(event));
            return true;
        }
        return false;
    }

    // What feeds it is not cut beside what it charges: that belongs before the line that laid it
    // open.
    bool cut_earlier(std::size_t event, const Objection& objection,
                     const std::vector<Act>& missing) {
        const auto* refused = std::get_if<bench::Refusal>(&objection);
        if (refused == nullptr || !std::holds_alternative<bench::StillLive>(*refused) ||
            missing.empty() || !meets_danger(walk_, state_, missing))
            return false;
        for (std::size_t at = event; at-- > 0;) {
            if (meets_danger(walk_, walk_.state_at(at), missing) ||
                !replay(walk_, at, missing, event))
                continue;
            patch(walk_, at, missing, event);
            walk_.troubles.push_back({event, objection, missing, {}, at});
            go_on_from(walk_.state_at(event));
            return true;
        }
        return false;
    }

    // As if it had been possible: also when nobody could say how.
    void force(Act act) {
        act.supplied = true;
        perform(act);
    }

    void do_note(std::size_t event) {
        const Action& action = *walk_.action(walk_.events[event]);
        for (const auto& target : action.targets) {
            if (!walk_.bench.exists(target.ref.item))
                continue;
            if (action.sort == ActionSort::replace)
                take_out(event, target.ref.item);
            if (action.sort == ActionSort::measure)
                make_measurable(event, target.ref.item, action);
        }
        bench::note(walk_.bench, state_, action);
        for (const auto& target : action.targets)
            note_change(target.ref.item);
    }

    void take_out(std::size_t event, model::ItemId item) {
        if (!bench::present(walk_.bench, state_, item))
            return;
        // Two lines the wrong way round: what is in its place now is to be the new one.
        if (const auto fitted = fitted_before(walk_, event, item)) {
            walk_.troubles.push_back(
                {event, StillInPlace{}, {}, {walk_.action(walk_.events[event])->line}, *fitted});
            return;
        }
        const model::Kind& kind = walk_.model.kind_of(item);
        const StateSet out = model::states_of_set(kind, 0) & ~kind.present;
        auto acts = bench::bring_to(walk_.bench, state_, item, out, wish_from(walk_, event));
        overcome(event, StillInPlace{}, acts ? std::move(*acts) : std::vector<Act>{});
    }

    // A limit is measured under its own condition, or else while the item is off its place.
    void make_measurable(std::size_t event, model::ItemId item, const Action& action) {
        for (const model::WearLimit& limit : walk_.model.item(item).rare->limits) {
            if (!action.aspect->empty() && limit.name != *action.aspect)
                continue;
            for (const auto& condition : limit.when)
                make_ready(event, condition, limit.span);
            if (!limit.when.empty() || !bench::in_first_state(walk_.bench, state_, item))
                return;
            const model::Kind& kind = walk_.model.kind_of(item);
            const StateSet off =
                model::states_of_set(kind, 0) & ~model::in_set(kind.set_first.front());
            get_ready(event, NotReady{item, off, limit.span});
            return;
        }
    }

    // Does one of these take something apart, other than from the controls?
    [[nodiscard]] bool opens_up(const std::vector<Act>& acts) const {
        return std::any_of(acts.begin(), acts.end(), [&](const Act& act) {
            const model::Verb& verb = walk_.model.kind_of(act.item).verbs[act.verb];
            return !verb.from_outside && takes_apart(walk_, {act});
        });
    }

    // Does a line after the test expect the item as the test does?
    [[nodiscard]] bool taken_back(std::size_t event, const NotReady& reason) const {
        return std::any_of(
            walk_.events.begin() + static_cast<std::ptrdiff_t>(event), walk_.events.end(),
            [&](const Event& later) {
                return later.act && later.act->item == reason.item &&
                       (walk_.model.kind_of(reason.item).verbs[later.act->verb].from &
                        reason.states) != 0;
            });
    }

    // Before the way back, do these put back what was taken apart? Then the test stands too late.
    [[nodiscard]] bool goes_back(std::size_t event, const std::vector<Act>& acts) const {
        return walk_.step(walk_.events[event]).section != model::Section::put_back &&
               std::any_of(acts.begin(), acts.end(), [&](const Act& act) {
                   const model::Kind& kind = walk_.model.kind_of(act.item);
                   const model::Verb& verb = kind.verbs[act.verb];
                   return verb.to == kind.set_first[kind.set_of[verb.to]];
               });
    }

    void get_ready(std::size_t event, const NotReady& reason) {
        auto acts = bench::bring_to(walk_.bench, state_, reason.item, reason.states,
                                    wish_from(walk_, event));
        const model::Kind& kind = walk_.model.kind_of(reason.item);
        const bool home =
            std::any_of(kind.set_first.begin(), kind.set_first.end(), [&](model::StateId first) {
                return model::contains(reason.states, first);
            });
        const auto stands = [&](const State& then) {
            const auto still = bench::bring_to(walk_.bench, then, reason.item, reason.states,
                                               wish_from(walk_, event));
            return still && still->empty();
        };
        const bool reopens = !acts || takes_apart(walk_, *acts);
        if (home && reopens && done_earlier(event, {{reason.item, reason.states}}, stands))
            return;
        // Nothing is to be taken apart again for a trial: it stands in the wrong place.
        const bool misplaced =
            !acts || goes_back(event, *acts) || (opens_up(*acts) && !taken_back(event, reason));
        if (!walk_.events[event].action && misplaced) {
            walk_.troubles.push_back({event, reason, {}, {}, event});
            return;
        }
        overcome(event, reason, acts ? std::move(*acts) : std::vector<Act>{});
    }

    void make_ready(std::size_t event, const model::Condition& condition, Span said) {
        if (bench::holds(walk_.bench, state_, condition))
            return;
        get_ready(event, NotReady{condition.item.item, model::in_set(condition.state), said});
    }

    void do_test(std::size_t event) {
        if (displaced(walk_, walk_.step(walk_.events[event])))
            return;
        for (const auto& condition : walk_.step(walk_.events[event]).when) {
            make_ready(event, condition, condition.span);
        }
        for (const model::ItemId item : run_test(walk_, state_, walk_.step(walk_.events[event])))
            note_change(item);
    }

    Walk& walk_;
    State state_;
    State next_;                         // the same, but while an act is tried in it
    std::vector<model::ItemId> changed_; // since the last record
    bench::Dangers dangers_;             // the items: those not made safe yet
};

} // namespace

Walk walk(const SourceMap& sources, const model::Model& model, const model::Procedure& procedure,
          unsigned variant) {
    Walk record{sources, model, procedure, {&model, variant}, {}, {}, {}, {}, {}, {}};
    record.dangers = bench::dangers(record.bench);
    list_events(record);
    Runner(record).run();
    find_left_off(record);
    join_troubles(record);
    return record;
}

} // namespace matchmark::check
