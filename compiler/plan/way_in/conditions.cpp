// Builds, for each task, what it waits for: reach, needs, live sources, ties, what blocks, hazards.
#include "plan/way_in/conditions.hpp"

#include "bench/contents.hpp"
#include "bench/isolation.hpp"
#include "bench/power.hpp"
#include "plan/way_in/condition_nodes.hpp"

namespace matchmark::plan {

using model::contains;
using model::Item;
using model::ItemId;
using model::ItemRef;
using model::Kind;
using model::Model;
using model::Role;
using model::StateId;
using model::StateSet;

NodeIndex Conditions::add(NodeSort sort, std::vector<NodeIndex> children, ActReason reason) {
    graph_.nodes.push_back({sort, std::move(children), reason});
    return static_cast<NodeIndex>(graph_.nodes.size() - 1);
}

NodeIndex Conditions::fact(std::uint32_t unit, StateId state) {
    const auto key = std::make_pair(unit, state);
    const auto known = facts_.find(key);
    if (known != facts_.end())
        return known->second;
    std::vector<NodeIndex> by;
    for (const TaskIndex task : graph_.tasks_of[unit]) {
        if (graph_.tasks[task].to == state)
            by.push_back(graph_.tasks[task].done);
    }
    const NodeIndex node = add(NodeSort::fact, std::move(by));
    facts_.emplace(key, node);
    return node;
}

// Every member named was in one of the states: at the start, or after some task.
NodeIndex Conditions::in_states(const ItemRef& ref, StateSet states, ActReason reason) {
    std::map<std::vector<std::uint16_t>, std::vector<NodeIndex>> by_class;
    for (const std::uint32_t u : graph_.units_of[ref.item.value]) {
        const Unit& unit = graph_.units[u];
        const bool named =
            ref.members.empty() || std::find(ref.members.begin(), ref.members.end(),
                                             unit.members.front()) != ref.members.end();
        if (!named)
            continue;
        const Kind& kind = model_.kind_of(ref.item);
        auto& ways = by_class[unit.members];
        for (std::size_t s = 0; s < kind.states.size(); ++s) {
            const auto state = static_cast<StateId>(s);
            if (kind.set_of[s] == unit.set && contains(states, state))
                ways.push_back(state == kind.set_first[unit.set] ? add(NodeSort::all, {})
                                                                 : fact(u, state));
        }
    }
    std::vector<NodeIndex> all;
    for (auto& [members, ways] : by_class)
        all.push_back(add(NodeSort::any, std::move(ways), reason));
    return all.size() == 1 ? all.front() : add(NodeSort::all, std::move(all));
}

NodeIndex Conditions::left(const ItemRef& ref, StateSet states, ActReason reason) {
    return in_states(ref, other_states(model_.kind_of(ref.item), states), reason);
}

NodeIndex Conditions::off(ItemId part, ActReason reason) {
    return left({part, {}, {}}, model_.kind_of(part).present, reason);
}

NodeIndex Conditions::out_of_the_way(const ItemRef& ref, const Chain& at, ItemId of, Span because) {
    const Kind& kind = model_.kind_of(ref.item);
    const ActReason covers{ReasonSort::covers, {}, ref.item, of, 0, because};
    if (kind.role != Role::part)
        return left(ref, model::is_tie(kind.role) ? kind.binds : kind.covers, covers);
    std::vector<NodeIndex> ways{left(ref, kind.covers, covers)};
    const Chain own = chain_of(model_, ref.item);
    const ActReason aside{ReasonSort::aside, {}, ref.item, of, 0, because};
    const auto elsewhere = [&](const Chain& some, const Chain& others) {
        for (const ItemId id : some) {
            if (!among(others, id) && bench_.exists(id))
                ways.push_back(off(id, aside));
        }
    };
    elsewhere(own, at);
    elsewhere(at, own);
    return add(NodeSort::any, std::move(ways));
}

NodeIndex Conditions::reach(ItemId id, const Chain& at, const std::vector<ItemId>& with_it) {
    std::vector<NodeIndex> all;
    const auto& clauses = model_.item(id).reach;
    for (std::uint32_t line = 0; line < clauses.size(); ++line) {
        const model::ReachClause& clause = clauses[line];
        std::vector<NodeIndex> ways;
        for (const auto& way : clause.ways) {
            std::vector<NodeIndex> clear;
            for (const ItemRef& ref : way) {
                if (!bench_.exists(ref.item) || among(with_it, ref.item))
                    continue;
                clear.push_back(out_of_the_way(ref, at, id, clause.span));
                note(clear.back(), {RelationSort::in_the_way, id, ref.item, line, {}});
            }
            ways.push_back(add(NodeSort::all, std::move(clear)));
        }
        if (!ways.empty())
            all.push_back(add(NodeSort::any, std::move(ways)));
    }
    return add(NodeSort::all, std::move(all));
}

Chain Conditions::seat_chain(ItemId id) const {
    const Item& item = model_.item(id);
    if (item.carrier.known())
        return chain_of(model_, item.carrier);
    const auto base = std::find_if(item.touches.rbegin(), item.touches.rend(),
                                   [&](ItemId part) { return bench_.exists(part); });
    return base == item.touches.rend() ? Chain{} : chain_of(model_, *base);
}

bool Conditions::leaves(const Task& task) const {
    const Kind& kind = model_.kind(item_of(task).kind);
    return kind.role == Role::part && graph_.units[task.unit].set == 0 &&
           contains(kind.present, task.from) && !contains(kind.present, task.to);
}

NodeIndex Conditions::one_terminal_open(const std::vector<ItemId>& terminals) {
    std::vector<NodeIndex> ways;
    for (const ItemId id : terminals) {
        if (bench_.exists(id))
            ways.push_back(lies_open(id));
    }
    return ways.empty() ? add(NodeSort::all, {}) : add(NodeSort::any, std::move(ways));
}

NodeIndex Conditions::lies_open(ItemId id) {
    const bool is_part = model_.item(id).role == Role::part;
    return reach(id, is_part ? chain_of(model_, id) : seat_chain(id), {});
}

void Conditions::add_reach(const Task& task, std::vector<NodeIndex>& all) {
    const ItemId id = graph_.units[task.unit].item;
    const Item& item = model_.item(id);
    const Kind& kind = model_.kind(item.kind);
    if (!model::asks_reach(kind, kind.verbs[task.verb]))
        return;
    if (!item.feeding->terminals.empty())
        all.push_back(one_terminal_open(item.feeding->terminals));
    if (item.reach.empty())
        return;
    const bool out = leaves(task);
    const auto with_it = out ? carried_by(bench_, id) : std::vector<ItemId>{};
    const NodeIndex at_seat = reach(id, seat_chain(id), with_it);
    if (item.role != Role::part || out) {
        all.push_back(at_seat);
        return;
    }
    // A part that is off is worked on where it lies.
    const NodeIndex by_itself =
        add(NodeSort::all, {off(id, {ReasonSort::aside, {}, id, id, 0, item.declaration}),
                            reach(id, chain_of(model_, id), {})});
    all.push_back(add(NodeSort::any, {at_seat, by_itself}));
}

void Conditions::add_needs(const Task& task, std::vector<NodeIndex>& all) {
    const ItemId id = graph_.units[task.unit].item;
    const Item& item = model_.item(id);
    const Kind& kind = model_.kind(item.kind);
    const model::Verb& verb = kind.verbs[task.verb];
    for (std::uint32_t line = 0; line < item.needs.size(); ++line) {
        const model::Need& need = item.needs[line];
        const bool asked = model::counts_for(kind, need, verb, model::in_set(task.from));
        const model::Condition& wanted = need.condition;
        if (asked && bench_.exists(wanted.item.item)) {
            all.push_back(
                in_states(wanted.item, model::states_of(need),
                          {ReasonSort::needs, {}, wanted.item.item, id, wanted.state, need.span}));
            note(all.back(), {RelationSort::needs, id, wanted.item.item, line, {}});
        }
    }
    for (const model::OwnNeed& need : kind.needs) {
        if (need.verb != verb.name)
            continue;
        StateId shown = 0;
        while (!contains(need.states, shown))
            ++shown;
        all.push_back(in_states({id, graph_.units[task.unit].members, {}}, need.states,
                                {ReasonSort::needs, {}, id, id, shown, need.span}));
    }
}

void Conditions::add_held(const Task& task, const std::vector<ItemId>& moved,
                          std::vector<NodeIndex>& all) {
    const ItemId id = graph_.units[task.unit].item;
    const bool out = leaves(task);
    const auto goes_along = [&](ItemId other) {
        if (!bench_.exists(other) || among(moved, other))
            return true;
        const Item& held = model_.item(other);
        return model::is_tie(held.role) && !held.touches.empty() &&
               std::all_of(held.touches.begin(), held.touches.end(),
                           [&](ItemId end) { return !bench_.exists(end) || among(moved, end); });
    };
    std::vector<ItemId> seen;
    for (const ItemId part : moved) {
        for (const ItemId tie : model_.item(part).ties) {
            const Item& holder = model_.item(tie);
            const bool hangs = !out && bench::may_hang_on(bench_, tie);
            if (hangs || !bench_.exists(tie) || among(seen, tie) ||
                std::all_of(holder.touches.begin(), holder.touches.end(), goes_along))
                continue;
            seen.push_back(tie);
            all.push_back(left({tie, {}, {}}, model_.kind_of(tie).binds,
                               {ReasonSort::holds, {}, tie, part, 0, holder.declaration}));
            note_holds(all.back(), tie, moved);
        }
    }
    for (const ItemId blocker : model_.item(id).blocked_by) {
        if (!out || !bench_.exists(blocker))
            continue;
        all.push_back(
            left({blocker, {}, {}}, model_.kind_of(blocker).blocks,
                 {ReasonSort::blocks, {}, blocker, id, 0, model_.item(blocker).declaration}));
        note(all.back(), {RelationSort::blocks, id, blocker, 0, {}});
    }
}

// The condition goes when this relation goes.
void Conditions::note(NodeIndex condition, const Relation& gone) {
    if (const auto relation = relations_.find(gone))
        graph_.conditions_of[*relation].push_back(condition);
}

// What the tie need not let go of, for it to hold no longer: the one moved part that it touches, or
// the one that stays.
void Conditions::note_holds(NodeIndex condition, ItemId tie, const std::vector<ItemId>& moved) {
    const auto& touches = model_.item(tie).touches;
    for (const ItemId gone : touches) {
        const auto is_left = [&](ItemId part, bool stays) {
            return part != gone && bench_.exists(part) && among(moved, part) != stays;
        };
        const bool holds_moved = std::any_of(touches.begin(), touches.end(),
                                             [&](ItemId part) { return is_left(part, false); });
        const bool holds_rest = std::any_of(touches.begin(), touches.end(),
                                            [&](ItemId part) { return is_left(part, true); });
        if (!holds_moved || !holds_rest)
            note(condition, {RelationSort::holds, gone, tie, 0, {}});
    }
}

void Conditions::add_pressing(const Task& task, std::vector<NodeIndex>& all) {
    const ItemId id = graph_.units[task.unit].item;
    const Kind& kind = model_.kind_of(id);
    const bool lets_go = model::is_tie(kind.role) && graph_.units[task.unit].set == 0 &&
                         contains(kind.binds, task.from) != contains(kind.binds, task.to);
    if (!lets_go || kind.verbs[task.verb].from_outside)
        return;
    for (const ItemId fastener : bench::pressing(bench_, id))
        all.push_back(
            left({fastener, {}, {}}, model_.kind_of(fastener).binds,
                 {ReasonSort::covers, {}, fastener, id, 0, model_.item(fastener).declaration}));
}

NodeIndex Conditions::goal_node(const WayInGoal& goal) {
    std::vector<NodeIndex> all;
    for (const ItemId id : goal.items) {
        const ActReason asked{ReasonSort::goal, {}, id, id, 0, {}};
        const Kind& kind = model_.kind_of(id);
        if (goal.expose) {
            all.push_back(lies_open(id));
        } else {
            const StateSet in = kind.role == Role::part    ? kind.present
                                : model::is_tie(kind.role) ? kind.binds
                                                           : kind.covers;
            all.push_back(left({id, {}, {}}, in, asked));
        }
    }
    return add(NodeSort::all, std::move(all));
}

// What stands in a part that is renewed is let out before the part comes out, and before a tie of
// it is undone, unless the fluid itself waits for that tie: a drain plug.
void Conditions::add_emptied(const Task& task, const std::vector<WayInGoal>& goals,
                             std::vector<NodeIndex>& all) {
    const ItemId id = graph_.units[task.unit].item;
    const Item& item = model_.item(id);
    const Kind& own = model_.kind(item.kind);
    const bool unties =
        model::is_tie(item.role) && contains(own.binds, task.from) && !contains(own.binds, task.to);
    if (!unties && !leaves(task))
        return;
    for (const WayInGoal& goal : goals) {
        for (const ItemId part : goal.items) {
            const bool out = part == id && goal.emptying != Emptying::none;
            const bool untied =
                unties && among(item.touches, part) && goal.emptying == Emptying::before_untied;
            if (!out && !untied)
                continue;
            for (const ItemId fluid : bench::fluids_in(bench_, part)) {
                if (bench::is_filled(bench_, start_, fluid) && !waits_for(fluid, id))
                    all.push_back(emptied(fluid, part));
            }
        }
    }
}

bool Conditions::waits_for(ItemId fluid, ItemId tie) const {
    const auto& needs = model_.item(fluid).needs;
    return std::any_of(needs.begin(), needs.end(),
                       [&](const model::Need& need) { return need.condition.item.item == tie; });
}

NodeIndex Conditions::emptied(ItemId fluid, ItemId part) {
    const Kind& kind = model_.kind_of(fluid);
    StateId empty = 0;
    while (empty + 1U < kind.states.size() &&
           (kind.set_of[empty] != 0 || contains(kind.present, empty)))
        ++empty;
    return left({fluid, {}, {}}, kind.present,
                {ReasonSort::needs, {}, fluid, part, empty, model_.item(fluid).span});
}

void Conditions::build(const std::vector<WayInGoal>& goals) {
    for (TaskIndex t = 0; t < graph_.tasks.size(); ++t) {
        graph_.tasks[t].done = add(NodeSort::task, {});
        graph_.task_of_node.resize(graph_.nodes.size());
        graph_.task_of_node[graph_.tasks[t].done] = t;
    }
    std::vector<std::vector<NodeIndex>> needs(graph_.tasks.size());
    for (TaskIndex t = 0; t < graph_.tasks.size(); ++t) {
        const Task task = graph_.tasks[t];
        const ItemId id = graph_.units[task.unit].item;
        const bool moves = model_.item(id).role == Role::part && graph_.units[task.unit].set == 0;
        const auto moved = moves ? carried_by(bench_, id) : std::vector<ItemId>{};
        add_reach(task, needs[t]);
        add_pressing(task, needs[t]);
        add_needs(task, needs[t]);
        add_live(task, moved, needs[t]);
        add_driven(task, needs[t]);
        add_supplies_off(task, needs[t]);
        add_emptied(task, goals, needs[t]); // before what holds the part is undone
        if (moves)
            add_held(task, moved, needs[t]);
        add_touched_hazards(task, needs[t]);
    }
    add_opened_hazards(needs);
    for (TaskIndex t = 0; t < graph_.tasks.size(); ++t) {
        const Task task = graph_.tasks[t];
        const Kind& kind = model_.kind(item_of(task).kind);
        const Unit& unit = graph_.units[task.unit];
        const NodeIndex conditions = add(NodeSort::all, std::move(needs[t]));
        std::vector<NodeIndex> children{conditions};
        if (task.from != kind.set_first[unit.set]) {
            const ActReason by_way{ReasonSort::by_way_of, {}, unit.item, unit.item, task.from, {}};
            children.push_back(add(NodeSort::any, {fact(task.unit, task.from)}, by_way));
        }
        graph_.tasks[t].needs = conditions;
        graph_.nodes[task.done].children = std::move(children);
    }
}

void Conditions::finish() {
    graph_.task_of_node.resize(graph_.nodes.size());
    if (graph_.conditions_of.empty())
        return;
    graph_.rests_on.resize(graph_.nodes.size());
    for (RelationIndex relation = 0; relation < graph_.conditions_of.size(); ++relation) {
        for (const NodeIndex node : graph_.conditions_of[relation])
            graph_.rests_on[node].push_back(relation);
    }
}

std::vector<NodeIndex> add_conditions(TaskGraph& graph, const std::vector<WayInGoal>& goals,
                                      const std::vector<Relation>& relations) {
    Conditions conditions(graph, relations);
    conditions.build(goals);
    std::vector<NodeIndex> nodes;
    std::transform(goals.begin(), goals.end(), std::back_inserter(nodes),
                   [&](const WayInGoal& goal) { return conditions.goal_node(goal); });
    conditions.finish();
    return nodes;
}

} // namespace matchmark::plan
