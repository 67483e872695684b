// Where the way back is not the way in reversed: seals are laid before their covers, plugs are in
// before what they hold back, and supplies restored last.
#include "plan/working_order.hpp"

#include "bench/work.hpp"
#include "model/run_out.hpp"

#include <algorithm>
#include <map>
#include <numeric>
#include <optional>
#include <set>
#include <utility>

namespace matchmark::plan {

using model::Action;
using model::ActionSort;
using model::ItemId;
using model::Model;
using model::Step;

namespace {

// Does the action move the part, or what carries it, back by a stage or wholly?
bool moves(const Model& model, const Action& action, ItemId part) {
    if (action.sort != ActionSort::verb)
        return false;
    return std::any_of(action.targets.begin(), action.targets.end(), [&](const auto& target) {
        const model::Kind& kind = model.kind_of(target.ref.item);
        if (kind.set_of[kind.verbs[target.verb].to] != 0)
            return false;
        for (ItemId at = part; at.known(); at = model.item(at).carrier) {
            if (at == target.ref.item)
                return true;
        }
        return false;
    });
}

// Is this the line that lays a seal, a tape or a paste?
bool lays(const Model& model, const Action& action) {
    if (!action.derived || action.sort != ActionSort::verb || action.targets.size() != 1)
        return false;
    const model::Target& target = action.targets.front();
    const model::Kind& kind = model.kind_of(target.ref.item);
    const model::Verb& verb = kind.verbs[target.verb];
    // Glue that is laid is set once the part is there.
    return kind.laid_first && model::contains(kind.binds, verb.to) && (verb.from & kind.binds) == 0;
}

struct ActPlace {
    std::size_t step = 0;
    std::size_t action = 0;
};

// The actions before `end` that move one of the parts, in order.
std::vector<ActPlace> moves_before(const Model& model, const std::vector<Step>& steps, ActPlace end,
                                   const std::vector<ItemId>& parts) {
    std::vector<ActPlace> found;
    for (std::size_t s = 0; s <= end.step; ++s) {
        const std::size_t count = s == end.step ? end.action : steps[s].actions.size();
        for (std::size_t a = 0; a < count; ++a) {
            const Action& action = steps[s].actions[a];
            if (std::any_of(parts.begin(), parts.end(),
                            [&](ItemId part) { return moves(model, action, part); }))
                found.push_back({s, a});
        }
    }
    return found;
}

// Where the laying of a seal belongs: before the first part that it ties comes back; where the part
// on which it lies comes later still, before that is shut.
std::optional<ActPlace> laying_place(const Model& model, const std::vector<Step>& steps,
                                     ActPlace now) {
    const Action& action = steps[now.step].actions[now.action];
    if (!lays(model, action))
        return std::nullopt;
    std::vector<ItemId> parts = model.item(action.targets.front().ref.item).touches;
    if (parts.empty())
        return std::nullopt;
    const std::vector<ItemId> base{parts.back()};
    parts.pop_back();
    const auto of_parts = moves_before(model, steps, now, parts);
    const auto of_base = moves_before(model, steps, now, base);
    const auto place = [](const ActPlace& at) { return std::pair(at.step, at.action); };
    if (!of_parts.empty() && (of_base.empty() || place(of_base.front()) < place(of_parts.front())))
        return of_parts.front();
    return of_base.empty() ? std::nullopt : std::optional(of_base.back());
}

// How many acts from `from` to before `to` the bench refuses in one variant. What stands before is
// done without asking.
std::size_t refusals(const bench::Bench& bench, bench::State state,
                     const std::vector<model::Resource>& resources, const std::vector<Step>& steps,
                     ActPlace from, ActPlace to) {
    std::size_t count = 0;
    for (std::size_t s = 0; s <= to.step; ++s) {
        const std::size_t end = s == to.step ? to.action : steps[s].actions.size();
        for (std::size_t a = 0; a < end; ++a) {
            const Action& action = steps[s].actions[a];
            if (((action.variants >> bench.variant) & 1U) == 0)
                continue;
            const bool asked = std::pair(s, a) >= std::pair(from.step, from.action);
            for (const model::Target& target : action.targets) {
                if (!asked || action.sort != ActionSort::verb || !bench.exists(target.ref.item))
                    continue;
                const auto act = bench::act_of(*bench.model, resources, action, target);
                count += bench::refusal(bench, state, act) ? 1 : 0;
            }
            bench::carry_out(bench, state, resources, action);
        }
    }
    return count;
}

std::size_t refusals(const Model& model, const WayBackStart& start, const std::vector<Step>& steps,
                     ActPlace from, ActPlace to) {
    std::size_t count = 0;
    for (unsigned variant = 0; variant < start.states.size(); ++variant)
        count +=
            refusals({&model, variant}, start.states[variant], start.resources, steps, from, to);
    return count;
}

void move_action(std::vector<Step>& steps, ActPlace from, ActPlace to) {
    const auto at = [](std::vector<Action>& actions, std::size_t index) {
        return actions.begin() + static_cast<std::ptrdiff_t>(index);
    };
    Action moved = std::move(steps[from.step].actions[from.action]);
    steps[from.step].actions.erase(at(steps[from.step].actions, from.action));
    auto& into = steps[to.step].actions;
    into.insert(at(into, to.action), std::move(moved));
}

// A seal may lie under what goes on before the cover does: then it stays where the reverse of the
// way in has it. Says whether the action was moved.
bool laid_earlier(const Model& model, const WayBackStart& start, std::vector<Step>& steps,
                  ActPlace now, ActPlace to) {
    const std::size_t before = refusals(model, start, steps, to, {now.step, now.action + 1});
    move_action(steps, now, to);
    const ActPlace end{now.step, to.step == now.step ? now.action + 1 : now.action};
    if (refusals(model, start, steps, to, end) <= before)
        return true;
    move_action(steps, to, now);
    return false;
}

void lay_first(const Model& model, const WayBackStart& start, std::vector<Step>& steps) {
    for (std::size_t s = 0; s < steps.size(); ++s) {
        const std::size_t count = steps[s].actions.size();
        std::size_t left = 0; // actions that went to an earlier step
        for (std::size_t i = 0; i < count; ++i) {
            const ActPlace now{s, i - left};
            const auto to = laying_place(model, steps, now);
            if (to && laid_earlier(model, start, steps, now, *to))
                left += to->step < s ? 1 : 0;
        }
    }
}

// Does the derived action fill a fluid in that its vessel's drain plug, taken out, would let out?
std::vector<ItemId> plugs_below(const Model& model, const Action& action) {
    if (!action.derived || action.sort != ActionSort::verb || action.targets.size() != 1)
        return {};
    const model::Target& target = action.targets.front();
    const model::Kind& kind = model.kind_of(target.ref.item);
    const bool fills = kind.role == model::Role::fluid &&
                       model::contains(kind.present, kind.verbs[target.verb].to);
    return fills ? model::drain_plugs(model, model.item(target.ref.item)) : std::vector<ItemId>{};
}

// The last action behind this place that tightens one of the plugs.
std::optional<ActPlace> last_closing(const Model& model, const std::vector<Step>& steps,
                                     ActPlace place, const std::vector<ItemId>& plugs) {
    const auto closes = [&](const model::Target& target) {
        const model::Kind& kind = model.kind_of(target.ref.item);
        return among(plugs, target.ref.item) &&
               model::contains(kind.binds, kind.verbs[target.verb].to);
    };
    for (std::size_t s = steps.size(); s-- > place.step;) {
        const auto& actions = steps[s].actions;
        const std::size_t first = s == place.step ? place.action + 1 : 0;
        for (std::size_t a = actions.size(); a-- > first;) {
            if (actions[a].sort == ActionSort::verb &&
                std::any_of(actions[a].targets.begin(), actions[a].targets.end(), closes))
                return ActPlace{s, a};
        }
    }
    return std::nullopt;
}

// The plug by which the oil ran out is in before the new oil goes in.
void fill_when_closed(const Model& model, std::vector<Step>& steps) {
    for (std::size_t s = steps.size(); s-- > 0;) {
        for (std::size_t a = steps[s].actions.size(); a-- > 0;) {
            const auto plugs = plugs_below(model, steps[s].actions[a]);
            const auto closing =
                plugs.empty() ? std::nullopt : last_closing(model, steps, {s, a}, plugs);
            if (closing)
                move_action(steps, {s, a},
                            {closing->step, closing->action + (closing->step == s ? 0U : 1U)});
        }
    }
}

// The source of energy, itself no part, on which a derived action works; unknown of any other, and
// of what is done at the terminals before they are covered.
ItemId source_of(const Model& model, const Action& action) {
    const bool alone =
        action.derived && action.sort == ActionSort::verb && action.targets.size() == 1;
    if (!alone || model.item(action.targets.front().ref.item).role != model::Role::energy)
        return {};
    const model::Target& target = action.targets.front();
    const model::Item& source = model.item(target.ref.item);
    const bool at_terminals =
        !source.terminals->empty() && !model.kind(source.kind).verbs[target.verb].from_outside;
    return at_terminals ? ItemId{} : target.ref.item;
}

// The sources that the way back makes live again.
std::set<ItemId> restored_sources(const Model& model, const std::vector<Step>& steps) {
    std::set<ItemId> sources;
    for (const Step& step : steps) {
        for (const Action& action : step.actions) {
            const ItemId source = source_of(model, action);
            if (!source.known())
                continue;
            // What hangs on a jack was no danger in the assembled device: it is let down in its
            // turn.
            const model::Kind& kind = model.kind_of(source);
            if (model::contains(kind.live, kind.set_first.front()) &&
                model::contains(kind.live, kind.verbs[action.targets.front().verb].to))
                sources.insert(source);
        }
    }
    return sources;
}

// Does anything but restoring follow this place?
bool work_follows(const Model& model, const std::vector<Step>& steps,
                  const std::set<ItemId>& sources, ActPlace place) {
    for (std::size_t s = place.step; s < steps.size(); ++s) {
        const auto& actions = steps[s].actions;
        for (std::size_t a = s == place.step ? place.action + 1 : 0; a < actions.size(); ++a) {
            if (!sources.contains(source_of(model, actions[a])))
                return true;
        }
    }
    return false;
}

// Does the action ask that the source stands as the restoring one leaves it: a tap shut, and no
// longer drained, while water is filled in?
bool asks_for(const Model& model, const Action& action, const Action& restoring) {
    const model::Target& to = restoring.targets.front();
    const model::StateId state = model.kind_of(to.ref.item).verbs[to.verb].to;
    if (action.sort != ActionSort::verb)
        return false;
    return std::any_of(action.targets.begin(), action.targets.end(), [&](const auto& target) {
        const model::Kind& kind = model.kind_of(target.ref.item);
        const model::Verb& verb = kind.verbs[target.verb];
        const auto& needs = model.item(target.ref.item).needs;
        return std::any_of(needs.begin(), needs.end(), [&](const model::Need& need) {
            return need.condition.item.item == to.ref.item &&
                   model::contains(model::states_of(need), state) &&
                   model::counts_for(kind, need, verb, verb.from);
        });
    });
}

// The next action that waits for what the one at this place restores.
std::optional<ActPlace> next_to_ask(const Model& model, const std::vector<Step>& steps,
                                    ActPlace place) {
    const Action& restoring = steps[place.step].actions[place.action];
    for (std::size_t s = place.step; s < steps.size(); ++s) {
        const auto& actions = steps[s].actions;
        for (std::size_t a = s == place.step ? place.action + 1 : 0; a < actions.size(); ++a) {
            if (asks_for(model, actions[a], restoring))
                return ActPlace{s, a};
        }
    }
    return std::nullopt;
}

// Two sources that the same action waits for stand before it in either order.
bool only_restored_between(const Model& model, const std::vector<Step>& steps, ActPlace from,
                           ActPlace to) {
    if (from.step != to.step)
        return false;
    const auto begin = steps[from.step].actions.begin();
    return std::all_of(begin + static_cast<std::ptrdiff_t>(from.action) + 1,
                       begin + static_cast<std::ptrdiff_t>(to.action),
                       [&](const Action& action) { return source_of(model, action).known(); });
}

// Has the restoring of the source begun in one of the steps? Then all of it stands there, in order.
bool works_on_any(const std::vector<Step>& steps, ItemId source) {
    return std::any_of(steps.begin(), steps.end(), [&](const Step& step) {
        return std::any_of(step.actions.begin(), step.actions.end(), [&](const Action& action) {
            return action.targets.front().ref.item == source;
        });
    });
}

// The next action on the same source, if others stand between: a supply that was locked off before
// the cover was opened and proved dead behind it is restored in one go.
std::optional<ActPlace> goes_on_at(const Model& model, const std::vector<Step>& steps,
                                   ActPlace place) {
    const ItemId source = source_of(model, steps[place.step].actions[place.action]);
    for (std::size_t s = place.step; s < steps.size(); ++s) {
        const auto& actions = steps[s].actions;
        for (std::size_t a = s == place.step ? place.action + 1 : 0; a < actions.size(); ++a) {
            if (source_of(model, actions[a]) != source)
                continue;
            const bool next = s == place.step && a == place.action + 1;
            return next ? std::nullopt : std::optional(ActPlace{s, a});
        }
    }
    return std::nullopt;
}

// A source that was isolated half way in is restored when all else is back, not half way out; what
// waits for it has it right before.
void restore_last(const Model& model, std::vector<Step>& steps) {
    const std::set<ItemId> sources = restored_sources(model, steps);
    std::vector<Step> restored;
    for (std::size_t s = 0; s < steps.size(); ++s) {
        for (std::size_t a = 0; a < steps[s].actions.size();) {
            const ItemId source = source_of(model, steps[s].actions[a]);
            const bool begun = works_on_any(restored, source);
            if (!sources.contains(source) ||
                !(begun || work_follows(model, steps, sources, {s, a}))) {
                ++a;
                continue;
            }
            if (const auto asked = next_to_ask(model, steps, {s, a})) {
                if (only_restored_between(model, steps, {s, a}, *asked))
                    ++a;
                else
                    move_action(steps, {s, a},
                                {asked->step, asked->action - (asked->step == s ? 1U : 0U)});
                continue;
            }
            if (const auto on = goes_on_at(model, steps, {s, a})) {
                move_action(steps, {s, a}, {on->step, on->action - (on->step == s ? 1U : 0U)});
                continue;
            }
            Step step;
            step.section = steps[s].section;
            step.name = steps[s].name + "-last";
            step.derived = true;
            step.head = steps[s].head;
            step.declaration = steps[s].declaration;
            step.variants = steps[s].variants;
            step.actions.push_back(std::move(steps[s].actions[a]));
            steps[s].actions.erase(steps[s].actions.begin() + static_cast<std::ptrdiff_t>(a));
            if (!restored.empty() && restored.back().name == step.name)
                restored.back().actions.push_back(std::move(step.actions.front()));
            else
                restored.push_back(std::move(step));
        }
    }
    for (Step& step : restored)
        steps.push_back(std::move(step));
}

// Does the action lead what moves to its first state: is it a pressure that a machine builds up?
bool builds_up(const Model& model, const Action& action) {
    const model::Target& target = action.targets.front();
    const model::Kind& kind = model.kind_of(target.ref.item);
    return kind.moves && kind.verbs[target.verb].to == kind.set_first.front();
}

// The number of the last action that works on the same source as each.
std::vector<std::size_t> ends_of_sources(const Model& model, const std::vector<Action>& actions) {
    std::vector<std::size_t> ends(actions.size());
    std::map<ItemId, std::size_t> last;
    for (std::size_t a = actions.size(); a-- > 0;)
        ends[a] = last.try_emplace(source_of(model, actions[a]), a).first->second;
    return ends;
}

// Of the restoring at the end of the step: each source is restored in one go, not one between two
// acts of another, and what a machine builds up by itself comes after the supply that runs it:
// "Plug in the mains and build up the air".
void group_restoring(const Model& model, std::vector<Action>& tail) {
    const auto ends = ends_of_sources(model, tail);
    std::vector<std::size_t> order(tail.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t left, std::size_t right) {
        return std::pair(builds_up(model, tail[left]), ends[left]) <
               std::pair(builds_up(model, tail[right]), ends[right]);
    });
    std::vector<Action> grouped;
    for (const std::size_t a : order)
        grouped.push_back(std::move(tail[a]));
    tail = std::move(grouped);
}

bool one_waits_for_another(const Model& model, const std::vector<Action>& actions) {
    return std::any_of(actions.begin(), actions.end(), [&](const Action& action) {
        return std::any_of(actions.begin(), actions.end(),
                           [&](const Action& other) { return asks_for(model, action, other); });
    });
}

void restore_each_in_one_go(const Model& model, std::vector<Step>& steps) {
    for (Step& step : steps) {
        const auto restores = [&](const Action& action) {
            return source_of(model, action).known();
        };
        const auto begin =
            std::find_if_not(step.actions.rbegin(), step.actions.rend(), restores).base();
        std::vector<Action> tail(begin, step.actions.end());
        if (one_waits_for_another(model, tail))
            continue;
        group_restoring(model, tail);
        std::move(tail.begin(), tail.end(), begin);
    }
}

} // namespace

void put_in_working_order(const Model& model, const WayBackStart& start, std::vector<Step>& steps) {
    lay_first(model, start, steps);
    fill_when_closed(model, steps);
    restore_last(model, steps);
    restore_each_in_one_go(model, steps);
    std::erase_if(steps, [](const Step& step) {
        return step.actions.empty() && step.title.empty() && step.prose.empty() &&
               step.photos.empty();
    });
}

} // namespace matchmark::plan
