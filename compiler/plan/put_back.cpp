// Reverses the take-apart: inverse verbs in reverse order, one-use items renewed, sources restored
// last.
#include "plan/put_back.hpp"

#include "model/fitting.hpp"
#include "model/step_title.hpp"
#include "plan/working_order.hpp"

#include <algorithm>
#include <iterator>
#include <map>

namespace matchmark::plan {

using bench::State;
using model::Action;
using model::ActionSort;
using model::ItemId;
using model::Model;
using model::Step;

namespace {

// One member's move, as it was done on the way in.
struct Move {
    std::size_t step = 0;
    const Action* action = nullptr;
    ItemId item;
    std::uint16_t member = 0; // from 0
    std::uint16_t verb = 0;
    model::StateId from = 0;
};

// All variants at once: what a variant lacks stays as it was and is never moved.
struct Tracker {
    const Model& model;
    const std::vector<model::Resource>& resources;
    bench::Bench bench{};
    State state{};

    Tracker(const Model& m, const std::vector<model::Resource>& r) : model(m), resources(r) {
        bench.model = &model;
        state = bench::assembled(bench);
    }
    void carry_out(const Action& action) { bench::carry_out(bench, state, resources, action); }
    [[nodiscard]] std::uint32_t slot(const Move& move) const {
        const model::Kind& kind = model.kind_of(move.item);
        return bench::slot(model, move.item, move.member, kind.set_of[kind.verbs[move.verb].to]);
    }
};

std::vector<Move> moves_of(Tracker& tracker, const std::vector<Step>& opening) {
    std::vector<Move> moves;
    std::vector<model::StateId> before; // of the members of one target
    const Model& model = tracker.model;
    for (std::size_t s = 0; s < opening.size(); ++s) {
        for (const Action& action : opening[s].actions) {
            if (action.sort == ActionSort::verb) {
                for (const auto& target : action.targets) {
                    const model::Verb& verb = model.kind_of(target.ref.item).verbs[target.verb];
                    before.clear();
                    for (std::uint16_t m = 0; m < model.item(target.ref.item).count; ++m)
                        before.push_back(tracker.state.slots[tracker.slot(
                            {s, &action, target.ref.item, m, target.verb, 0})]);
                    bench::perform(tracker.bench, tracker.state,
                                   bench::act_of(model, tracker.resources, action, target));
                    for (std::uint16_t m = 0; m < model.item(target.ref.item).count; ++m) {
                        Move move{s, &action, target.ref.item, m, target.verb, 0};
                        const auto at = tracker.slot(move);
                        move.from = before[m];
                        if (tracker.state.slots[at] != move.from &&
                            tracker.state.slots[at] == verb.to) {
                            moves.push_back(move);
                        }
                    }
                }
            } else {
                tracker.carry_out(action);
            }
        }
    }
    return moves;
}

// Shut for a while and opened again: the pair changes nothing, and the way back is that of the
// first opening. Nor does a spring let down and loaded again while it is held: the way back is that
// of the holding.
std::vector<Move> without_pauses(const Tracker& tracker, const std::vector<Move>& moves) {
    std::vector<bool> dropped(moves.size());
    std::map<std::uint32_t, std::vector<std::size_t>> by_slot;
    const auto to = [&](std::size_t i) {
        return tracker.model.kind_of(moves[i].item).verbs[moves[i].verb].to;
    };
    const auto is_detour = [&](const Move& out, model::StateId back) {
        const model::Kind& kind = tracker.model.kind_of(out.item);
        return back == out.from && back != kind.set_first[kind.set_of[back]];
    };
    for (std::size_t i = 0; i < moves.size(); ++i) {
        auto& before = by_slot[tracker.slot(moves[i])];
        const std::size_t count = before.size();
        const bool again = count >= 2 && to(before[count - 1]) == moves[before[count - 2]].from &&
                           to(before[count - 2]) == to(i);
        if (again || (count >= 1 && is_detour(moves[before.back()], to(i)))) {
            dropped[before.back()] = dropped[i] = true;
            before.pop_back();
        } else {
            before.push_back(i);
        }
    }
    std::vector<Move> kept;
    for (std::size_t i = 0; i < moves.size(); ++i) {
        if (!dropped[i])
            kept.push_back(moves[i]);
    }
    return kept;
}

// Must this move be taken back? Not if something else has moved it since, or it may stay, or it
// does not go back.
bool to_be_reversed(const Tracker& tracker, const Move& move) {
    const model::Kind& kind = tracker.model.kind_of(move.item);
    const model::StateId to = kind.verbs[move.verb].to;
    if (to == kind.set_first[kind.set_of[to]])
        return false; // it is home
    if (tracker.state.slots[tracker.slot(move)] != to || model::contains(kind.may_end, to))
        return false;
    const auto& item = tracker.model.item(move.item);
    return (tracker.state.flags[item.first_member + move.member] & bench::given_up) == 0;
}

// What took the item off puts it back, where it fits: several tools of a list may. What can be set
// to the torque goes before it, and a hand sets none.
void use_the_same_tool(const Tracker& tracker, const model::Item& item, const model::Verb& back,
                       const Action& way_in, Action& action) {
    const auto& list = tracker.resources;
    const auto& torque = action.tightening->torque;
    const auto is_set = [&](model::ResourceId id) {
        return torque && model::sets_torque(tracker.model, list[id.value], *torque);
    };
    if (action.with.empty() ? !torque || back.tools.empty()
                            : list[action.with.front().value].sort != model::ResourceSort::tool ||
                                  is_set(action.with.front()))
        return;
    const auto same =
        std::find_if(way_in.with.begin(), way_in.with.end(), [&](model::ResourceId id) {
            return model::tool_fits(tracker.model, list[id.value], item, back);
        });
    if (same == way_in.with.end())
        return;
    if (action.with.empty())
        action.with.push_back(*same);
    else
        action.with.edit().front() = *same;
}

// Members of one item that were moved by one action, from one state: taken back by one action.
std::vector<Action> reverse_step(Tracker& tracker, const std::vector<Move>& moves,
                                 std::size_t step) {
    std::vector<Action> actions;
    const Model& model = tracker.model;
    // They stand in the order of the work: those of a step together, and so those of an action.
    const auto before = [](const Move& move, std::size_t wanted) { return move.step < wanted; };
    const auto begin = std::lower_bound(moves.begin(), moves.end(), step, before);
    const auto end = std::lower_bound(begin, moves.end(), step + 1, before);
    for (auto at = end; at != begin;) {
        const Move& last = *--at;
        if (!to_be_reversed(tracker, last))
            continue;
        const model::Kind& kind = model.kind_of(last.item);
        const model::Verb* back = model::inverse(kind, kind.verbs[last.verb], last.from);
        if (back == nullptr)
            continue;
        model::ItemRef ref;
        ref.item = last.item;
        ref.span = model.item(last.item).span;
        bool spent = false;
        auto first = at;
        while (first != begin && std::prev(first)->action == last.action)
            --first;
        for (; first <= at; ++first) {
            const Move& move = *first;
            const bool same =
                move.item == last.item && move.verb == last.verb && move.from == last.from;
            if (!same || !to_be_reversed(tracker, move))
                continue;
            ref.members.push_back(static_cast<std::uint16_t>(move.member + 1));
            const std::uint8_t flags =
                tracker.state.flags[model.item(move.item).first_member + move.member];
            spent = spent || (flags & bench::spent) != 0;
        }
        const bool returns = kind.set_of[back->to] == 0;
        const bool renew = model.item(last.item).one_use && spent && returns;
        if (ref.members.size() == model.item(last.item).count)
            ref.members.clear();
        Action action =
            model::written_action(model, tracker.resources, ref,
                                  static_cast<std::uint16_t>(back - kind.verbs.data()), renew);
        use_the_same_tool(tracker, model.item(last.item), *back, *last.action, action);
        action.line = last.action->line;
        action.head = last.action->head;
        action.variants = last.action->variants & model.item(last.item).variants;
        tracker.carry_out(action);
        actions.push_back(std::move(action));
    }
    return actions;
}

const WrittenBack* words_for(const std::vector<WrittenBack>& written, const std::string& name) {
    for (const auto& entry : written) {
        if (!entry.step.is_test && entry.reverses == name)
            return &entry;
    }
    return nullptr;
}

void put_first_and_following(std::vector<Step>& steps, const std::vector<WrittenBack>& written) {
    std::size_t at_front = 0;
    for (const auto& entry : written) {
        if (entry.step.is_test || !entry.reverses.empty())
            continue;
        auto where = steps.end();
        if (entry.first) {
            where = steps.begin() + static_cast<std::ptrdiff_t>(at_front++);
        } else if (!entry.after.empty()) {
            const auto before = std::find_if(steps.begin(), steps.end(), [&](const Step& step) {
                return step.name == entry.after;
            });
            if (before != steps.end())
                where = before + 1;
        }
        steps.insert(where, entry.step);
    }
}

WayBackStart way_back_start(const Model& model, const std::vector<model::Resource>& resources,
                            const std::vector<Step>& opening,
                            const std::vector<WrittenBack>& written) {
    WayBackStart start{{}, resources};
    for (unsigned variant = 0; variant < model::variant_count(model); ++variant) {
        const bench::Bench bench{&model, variant};
        State state = bench::assembled(bench);
        const auto carry_out = [&](const Step& step) {
            for (const Action& action : step.actions) {
                if (((action.variants >> variant) & 1U) != 0)
                    bench::carry_out(bench, state, resources, action);
            }
        };
        for (const Step& step : opening)
            carry_out(step);
        for (const auto& entry : written) {
            if (entry.first && !entry.step.is_test)
                carry_out(entry.step);
        }
        start.states.push_back(std::move(state));
    }
    return start;
}

} // namespace

std::vector<Step> derive_put_back(const Model& model, const std::vector<model::Resource>& resources,
                                  const std::vector<Step>& opening,
                                  const std::vector<WrittenBack>& written) {
    Tracker tracker(model, resources);
    const std::vector<Move> moves = without_pauses(tracker, moves_of(tracker, opening));
    for (const auto& entry : written) {
        if (!entry.first || entry.step.is_test)
            continue;
        for (const Action& action : entry.step.actions)
            tracker.carry_out(action);
    }
    std::vector<Step> steps;
    steps.reserve(opening.size());
    for (std::size_t s = opening.size(); s-- > 0;) {
        const WrittenBack* words = words_for(written, opening[s].name);
        Step step;
        if (words != nullptr)
            step = words->step;
        step.section = model::Section::put_back;
        step.name = opening[s].name;
        step.derived = true;
        if (words == nullptr) {
            step.head = opening[s].head;
            step.declaration = opening[s].declaration;
            step.variants = opening[s].variants;
        }
        if (step.actions.empty()) {
            step.actions = reverse_step(tracker, moves, s);
        } else {
            for (const Action& action : step.actions)
                tracker.carry_out(action);
        }
        if (step.actions.empty() && words == nullptr)
            continue;
        steps.push_back(std::move(step));
    }
    put_in_working_order(model, way_back_start(model, resources, opening, written), steps);
    for (Step& step : steps) {
        if (step.title.empty())
            step.title = model::step_title(model, model::deeds_of(step.actions));
    }
    put_first_and_following(steps, written);
    return steps;
}

} // namespace matchmark::plan
