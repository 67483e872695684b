// Where the way back is not the way in reversed: seals are laid before their covers, plugs are in
// before what they hold back, and supplies restored last.
#include "plan/working_order.hpp"

#include "bench/work.hpp"
#include "model/run_out.hpp"
#include "plan/act_place.hpp"
#include "plan/restoring_order.hpp"

#include <algorithm>
#include <optional>
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

} // namespace

void put_in_working_order(const Model& model, const WayBackStart& start, std::vector<Step>& steps) {
    lay_first(model, start, steps);
    fill_when_closed(model, steps);
    put_restoring_in_order(model, steps);
    std::erase_if(steps, [](const Step& step) {
        return step.actions.empty() && step.title.empty() && step.prose.empty() &&
               step.photos.empty();
    });
}

} // namespace matchmark::plan
