// Does an act on the bench, or says the first reason why it cannot be done.
//
// The numbers are those of docs/semantics.md, "When an act may be done".
#include "bench/attempt.hpp"
#include "bench/recharge.hpp"
#include "bench/under_power.hpp"

#include <algorithm>

namespace matchmark::bench {

using model::contains;
using model::Item;
using model::Kind;
using model::Role;
using model::Verb;

namespace {

// 1. The item is in the verb's from-state.
std::optional<Refusal> wrong_state(const Attempt& at) {
    const Act& act = at.act;
    if (act.members.empty()) {
        if (!at.members.empty())
            return std::nullopt;
        return WrongState{state_of(at.bench, at.state, act.item, 0, at.set), 0};
    }
    for (const auto member : act.members) {
        const auto index = static_cast<std::uint16_t>(member - 1U);
        const StateId found = state_of(at.bench, at.state, act.item, index, at.set);
        if (!contains(at.verb.from, found))
            return WrongState{found, index};
    }
    return std::nullopt;
}

// The fasteners that still press a tie which the act lays or parts.
std::vector<ItemId> still_pressing(const Attempt& at) {
    std::vector<ItemId> found;
    if (!model::is_tie(at.item.role) || !changes(at, at.kind.binds))
        return found;
    for (const ItemId fastener : pressing(at.bench, at.act.item)) {
        if (binds(at.bench, at.state, fastener))
            found.push_back(fastener);
    }
    return found;
}

// A supply that no part carries is worked on by hand, as when it is proved dead, where one of its
// terminals lies open; told by the one that least stands before.
std::optional<Refusal> no_terminal_open(const Attempt& at) {
    OutOfReach nearest;
    for (const ItemId terminal : at.item.feeding->terminals) {
        if (!at.bench.exists(terminal))
            continue;
        OutOfReach reason;
        reason.by = covers_of(at.bench, at.state, terminal, &reason.because);
        if (reason.by.empty())
            return std::nullopt;
        if (nearest.by.empty() || reason.by.size() < nearest.by.size()) {
            nearest = std::move(reason);
            nearest.terminal = terminal;
        }
    }
    if (nearest.by.empty())
        return std::nullopt;
    return nearest;
}

// 2. It can be reached, and no fastener presses what is laid first or clamped.
std::optional<Refusal> out_of_reach(const Attempt& at) {
    if (!model::asks_reach(at.kind, at.verb))
        return std::nullopt;
    if (!at.item.feeding->terminals.empty())
        return no_terminal_open(at);
    if (auto fasteners = still_pressing(at); !fasteners.empty())
        return OutOfReach{std::move(fasteners), at.item.declaration};
    const bool at_seat = at.item.role != Role::part || changes(at, at.kind.present) ||
                         present(at.bench, at.state, at.act.item);
    const ItemId where = at_seat ? seat(at.bench, at.state, at.act.item) : at.act.item;
    OutOfReach reason;
    const auto along = at.item.role == Role::part && changes(at, at.kind.present)
                           ? moved_with(at.bench, at.state, at.act.item)
                           : std::vector<ItemId>{};
    reason.by = in_the_way(at.bench, at.state, at.act.item, where, along, &reason.because);
    if (reason.by.empty())
        return std::nullopt;
    return reason;
}

// The states, of the verb's own set, that the act leads out of.
StateSet left_by(const Attempt& at) {
    StateSet states = 0;
    for (const auto member : at.members)
        states |= model::in_set(state_of(at.bench, at.state, at.act.item, member, at.set));
    return states;
}

// 3. What it needs is so; the same for the verb that leads back, and for one that passes over it.
std::optional<Refusal> unmet_need(const Attempt& at) {
    const StateSet from = at.item.needs.empty() ? StateSet{} : left_by(at);
    for (const model::Need& need : at.item.needs) {
        if (!model::counts_for(at.kind, need, at.verb, from) || holds(at.bench, at.state, need))
            continue;
        return UnmetNeed{need.condition.item.item, model::states_of(need), need.span};
    }
    for (const model::OwnNeed& need : at.kind.needs) {
        if (need.verb != at.verb.name)
            continue;
        for (const auto member : at.members) {
            bool met = false;
            for (unsigned set = 0; set < at.kind.set_count(); ++set) {
                met = met ||
                      contains(need.states, state_of(at.bench, at.state, at.act.item, member, set));
            }
            if (!met)
                return UnmetNeed{at.act.item, need.states, need.span};
        }
    }
    return std::nullopt;
}

// Does the tie hold on to anything that is not moved? A fastener that binds only what is moved goes
// along: the nut that a split pin holds.
bool reaches_beyond(const Bench& bench, const Item& tie, const std::vector<ItemId>& moved) {
    return std::any_of(tie.touches.begin(), tie.touches.end(), [&](ItemId other) {
        if (!bench.exists(other) || among(moved, other))
            return false;
        const Item& held = bench.model->item(other);
        const bool along = model::is_tie(held.role) && !held.touches.empty() &&
                           std::all_of(held.touches.begin(), held.touches.end(), [&](ItemId end) {
                               return !bench.exists(end) || among(moved, end);
                           });
        return !along;
    });
}

// 5. Nothing ties what is moved to what stays, and nothing blocks it.
std::optional<Refusal> still_held(const Attempt& at, const std::vector<ItemId>& moved) {
    if (at.item.role != Role::part || !at.first_set)
        return std::nullopt;
    const bool leaves = changes(at, at.kind.present);
    const bool homeward = model::leads_home(at.kind, at.verb);
    StillHeld reason;
    for (const ItemId part : moved) {
        for (const ItemId tie : at.bench.model->item(part).ties) {
            const Item& holder = at.bench.model->item(tie);
            if (!leaves && may_hang_on(at.bench, tie))
                continue;
            if (homeward && at.bench.model->kind(holder.kind).laid_first)
                continue;
            if (among(at.act.lifted_after, tie))
                continue;
            if (among(reason.by, tie) || !binds(at.bench, at.state, tie))
                continue;
            if (reaches_beyond(at.bench, holder, moved))
                reason.by.push_back(tie);
        }
    }
    if (!reason.by.empty())
        return reason;
    if (!leaves)
        return std::nullopt;
    for (const ItemId blocker : at.item.blocked_by) {
        if (blocks(at.bench, at.state, blocker))
            return StillBlocked{blocker};
    }
    return std::nullopt;
}

// Is the part named last, behind `to`, at its place? What is laid first lies on it. It does so on
// the bench, too, while all that it lies between is there, and belongs into that part.
bool lies_on_base(const Attempt& at) {
    std::vector<ItemId> parts = at.item.touches;
    std::erase_if(parts, [&](ItemId part) { return !at.bench.exists(part); });
    if (parts.empty() || present(at.bench, at.state, parts.back()))
        return !parts.empty();
    return std::all_of(parts.begin(), parts.end(), [&](ItemId part) {
        return !present(at.bench, at.state, part) &&
               model::is_in(*at.bench.model, part, parts.back());
    });
}

// 6. What a tie is to bind sits together: in one body, or for a connector in one place.
std::optional<Refusal> not_seated(const Attempt& at) {
    const bool starts_to_bind = model::is_tie(at.item.role) &&
                                contains(at.kind.binds, at.verb.to) && changes(at, at.kind.binds);
    if (!starts_to_bind)
        return std::nullopt;
    const bool same_place_will_do = at.item.role == Role::connector;
    const auto stands = [&](ItemId part) {
        return same_place_will_do ? place(at.bench, at.state, part)
                                  : body(at.bench, at.state, part);
    };
    if (at.kind.laid_first && lies_on_base(at))
        return std::nullopt;
    NotSeated reason;
    std::optional<ItemId> common;
    bool apart = false;
    for (const ItemId part : at.item.touches) {
        if (!at.bench.exists(part))
            continue;
        const ItemId where = stands(part);
        if (where.known() && !among(reason.parts, where))
            reason.parts.push_back(where);
        apart = apart || (common && *common != where);
        common = where;
    }
    if (!apart)
        return std::nullopt;
    return reason;
}

// 7. What is good for one use was renewed, or is now.
std::optional<Refusal> used_twice(const Attempt& at) {
    const bool returns = at.first_set && at.verb.to == at.kind.set_first.front();
    if (!at.item.one_use || !returns || at.act.supplied)
        return std::nullopt;
    for (const auto member : at.members) {
        const std::uint8_t flags = at.state.flags[at.item.first_member + member];
        if ((flags & spent) != 0)
            return UsedTwice{};
    }
    return std::nullopt;
}

} // namespace

std::optional<Refusal> refusal(const Bench& bench, const State& state, const Act& act) {
    const Attempt at = attempt(bench, state, act);
    if (auto reason = wrong_state(at))
        return reason;
    if (auto reason = out_of_reach(at))
        return reason;
    if (auto reason = unmet_need(at))
        return reason;
    if (auto reason = still_live(at))
        return reason;
    const bool moves = at.item.role == Role::part && at.first_set;
    const auto moved = moves ? moved_with(bench, state, act.item) : std::vector<ItemId>{};
    if (auto reason = still_held(at, moved))
        return reason;
    if (auto reason = not_seated(at))
        return reason;
    return used_twice(at);
}

void perform(const Bench& bench, State& state, const Act& act) {
    const Model& model = *bench.model;
    const Item& item = model.item(act.item);
    const Kind& kind = model.kind(item.kind);
    const Verb& verb = kind.verbs[act.verb];
    const unsigned set = kind.set_of[verb.to];
    const std::vector<ItemId> were_dead = dead_sources_of(bench, state, act.item);
    for (const auto member : changing(bench, state, act)) {
        std::uint8_t& flags = state.flags[item.first_member + member];
        StateId& stands = state.slots[slot(model, act.item, member, set)];
        // On the way home by stages, the new one comes with the first stage: glue as it is laid.
        const bool homeward = verb.to < stands;
        if (set == 0 && !homeward)
            flags = static_cast<std::uint8_t>(flags | spent);
        if (set == 0 && homeward && act.supplied)
            flags = static_cast<std::uint8_t>(flags & ~spent);
        stands = verb.to;
    }
    charge_again(bench, state, were_dead);
}

std::optional<Refusal> apply(const Bench& bench, State& state, const Act& act) {
    auto reason = refusal(bench, state, act);
    if (!reason)
        perform(bench, state, act);
    return reason;
}

std::optional<Act> reversed(const Model& model, const Act& act, StateId from) {
    const Kind& kind = model.kind_of(act.item);
    const Verb* back = model::inverse(kind, kind.verbs[act.verb], from);
    if (back == nullptr)
        return std::nullopt;
    Act result = act;
    result.verb = static_cast<std::uint16_t>(back - kind.verbs.data());
    result.supplied = false;
    return result;
}

} // namespace matchmark::bench
