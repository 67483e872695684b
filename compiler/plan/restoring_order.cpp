// Supplies go on when all else is back, in one go each, the water before the power.
#include "plan/restoring_order.hpp"

#include "plan/act_place.hpp"

#include <algorithm>
#include <iterator>
#include <map>
#include <numeric>
#include <optional>
#include <set>
#include <tuple>
#include <utility>

namespace matchmark::plan {

using model::Action;
using model::ActionSort;
using model::ItemId;
using model::Model;
using model::Step;

namespace {

// The source of energy, itself no part, on which a derived action works; unknown of any other, and
// of what is done at the terminals before they are covered.
ItemId source_of(const Model& model, const Action& action) {
    const bool alone =
        action.derived && action.sort == ActionSort::verb && action.targets.size() == 1;
    if (!alone || model.item(action.targets.front().ref.item).role != model::Role::energy)
        return {};
    const model::Target& target = action.targets.front();
    const model::Item& source = model.item(target.ref.item);
    const bool at_terminals = !source.feeding->terminals.empty() &&
                              !model.kind(source.kind).verbs[target.verb].from_outside;
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

// The next action that waits for what the one at this place restores, or for what one after it on
// the same source does: a tap is shut off from draining, and then turned on, to fill the tank.
std::optional<ActPlace> next_to_ask(const Model& model, const std::vector<Step>& steps,
                                    ActPlace place) {
    std::vector<const Action*> restoring{&steps[place.step].actions[place.action]};
    const ItemId source = source_of(model, *restoring.front());
    for (std::size_t s = place.step; s < steps.size(); ++s) {
        const auto& actions = steps[s].actions;
        for (std::size_t a = s == place.step ? place.action + 1 : 0; a < actions.size(); ++a) {
            if (source_of(model, actions[a]) == source)
                restoring.push_back(&actions[a]);
        }
    }
    for (std::size_t s = place.step; s < steps.size(); ++s) {
        const auto& actions = steps[s].actions;
        for (std::size_t a = s == place.step ? place.action + 1 : 0; a < actions.size(); ++a) {
            if (std::any_of(restoring.begin(), restoring.end(), [&](const Action* action) {
                    return asks_for(model, actions[a], *action);
                }))
                return ActPlace{s, a};
        }
    }
    return std::nullopt;
}

// What stands before its supply in the reversed way in, and asks for it: a tank that its tap fills.
std::optional<ActPlace> asked_before(const Model& model, const std::vector<Step>& steps,
                                     ActPlace place) {
    const Action& restoring = steps[place.step].actions[place.action];
    for (std::size_t s = 0; s <= place.step; ++s) {
        const std::size_t end = s == place.step ? place.action : steps[s].actions.size();
        for (std::size_t a = 0; a < end; ++a) {
            if (asks_for(model, steps[s].actions[a], restoring))
                return ActPlace{s, a};
        }
    }
    return std::nullopt;
}

// Takes what works on the source out of the steps, from one place up to another.
std::vector<Action> take_out(const Model& model, std::vector<Step>& steps, ItemId source,
                             ActPlace from, ActPlace up_to) {
    std::vector<Action> taken;
    for (std::size_t s = from.step; s <= up_to.step; ++s) {
        auto& actions = steps[s].actions.edit();
        std::size_t count = s == up_to.step ? up_to.action + 1 : actions.size();
        for (std::size_t a = s == from.step ? from.action : 0; a < count;) {
            if (source_of(model, actions[a]) != source) {
                ++a;
                continue;
            }
            taken.push_back(std::move(actions[a]));
            actions.erase(actions.begin() + static_cast<std::ptrdiff_t>(a));
            --count;
        }
    }
    return taken;
}

// All on its way up to the restoring one goes before what asks for it.
void restore_what_is_asked_for(const Model& model, std::vector<Step>& steps) {
    const std::set<ItemId> sources = restored_sources(model, steps);
    for (std::size_t s = 0; s < steps.size(); ++s) {
        for (std::size_t a = 0; a < steps[s].actions.size(); ++a) {
            const ItemId source = source_of(model, steps[s].actions[a]);
            const auto to =
                sources.contains(source) ? asked_before(model, steps, {s, a}) : std::nullopt;
            if (!to)
                continue;
            auto chain = take_out(model, steps, source, *to, {s, a});
            auto& into = steps[to->step].actions.edit();
            into.insert(into.begin() + static_cast<std::ptrdiff_t>(to->action),
                        std::make_move_iterator(chain.begin()),
                        std::make_move_iterator(chain.end()));
        }
    }
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

bool carries_matter(const Model& model, const Action& action) {
    const ItemId source = source_of(model, action);
    return source.known() && model::carries_matter(model.kind_of(source));
}

// Where the first supply of power is restored for good.
std::optional<ActPlace> first_power(const Model& model, const std::vector<Step>& steps,
                                    const std::set<ItemId>& sources) {
    for (std::size_t s = 0; s < steps.size(); ++s) {
        for (std::size_t a = 0; a < steps[s].actions.size(); ++a) {
            const Action& action = steps[s].actions[a];
            if (sources.contains(source_of(model, action)) && !carries_matter(model, action) &&
                !work_follows(model, steps, sources, {s, a}))
                return ActPlace{s, a};
        }
    }
    return std::nullopt;
}

// Water is on before the power that heats it: an element that is switched on dry burns out (common
// practice, no source).
void water_before_power(const Model& model, const std::set<ItemId>& sources,
                        std::vector<Step>& steps, std::vector<Step>& restored) {
    const auto is_water = [&](const Step& step) {
        return carries_matter(model, step.actions.front());
    };
    std::stable_partition(restored.begin(), restored.end(), is_water);
    auto power = first_power(model, steps, sources);
    while (power && !restored.empty() && is_water(restored.front())) {
        auto& actions = restored.front().actions.edit();
        auto& into = steps[power->step].actions.edit();
        into.insert(into.begin() + static_cast<std::ptrdiff_t>(power->action),
                    std::make_move_iterator(actions.begin()),
                    std::make_move_iterator(actions.end()));
        power->action += actions.size();
        restored.erase(restored.begin());
    }
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
            auto& actions = steps[s].actions.edit();
            step.actions.edit().push_back(std::move(actions[a]));
            actions.erase(actions.begin() + static_cast<std::ptrdiff_t>(a));
            if (!restored.empty() && restored.back().name == step.name)
                restored.back().actions.edit().push_back(step.actions.front());
            else
                restored.push_back(std::move(step));
        }
    }
    water_before_power(model, sources, steps, restored);
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
        const auto place = [&](std::size_t a) {
            return std::tuple(builds_up(model, tail[a]), !carries_matter(model, tail[a]), ends[a]);
        };
        return place(left) < place(right);
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
        if (tail.size() < 2 || one_waits_for_another(model, tail))
            continue;
        group_restoring(model, tail);
        auto& actions = step.actions.edit();
        std::move(tail.begin(), tail.end(),
                  actions.end() - static_cast<std::ptrdiff_t>(tail.size()));
    }
}

// The steps at the end that do nothing but restore: what a machine builds up comes after the supply
// that runs it there, too.
void build_up_last(const Model& model, std::vector<Step>& steps) {
    const auto only_restores = [&](const Step& step) {
        return !step.actions.empty() &&
               std::all_of(step.actions.begin(), step.actions.end(),
                           [&](const Action& action) { return source_of(model, action).known(); });
    };
    const auto begin = std::find_if_not(steps.rbegin(), steps.rend(), only_restores).base();
    std::vector<Action> actions;
    for (auto step = begin; step != steps.end(); ++step)
        actions.insert(actions.end(), step->actions.begin(), step->actions.end());
    if (one_waits_for_another(model, actions))
        return;
    std::stable_partition(begin, steps.end(), [&](const Step& step) {
        return std::none_of(step.actions.begin(), step.actions.end(),
                            [&](const Action& action) { return builds_up(model, action); });
    });
}

} // namespace

void put_restoring_in_order(const Model& model, std::vector<Step>& steps) {
    restore_what_is_asked_for(model, steps);
    restore_last(model, steps);
    restore_each_in_one_go(model, steps);
    build_up_last(model, steps);
}

} // namespace matchmark::plan
