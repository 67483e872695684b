// Builds, for each task, what it waits for: reach, needs, live sources, ties, what blocks, hazards.
#include "plan/way_in_conditions.hpp"

#include <algorithm>

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

namespace {

using Chain = std::vector<ItemId>;

bool among(const std::vector<ItemId>& list, ItemId id) {
    return std::find(list.begin(), list.end(), id) != list.end();
}

class Conditions {
public:
    Conditions(TaskGraph& graph, const WayInGoal& goal)
        : graph_(graph), bench_(*graph.bench), model_(*bench_.model), goal_(goal),
          start_(bench::assembled(bench_)) {}

    void build();

private:
    NodeIndex add(NodeSort sort, std::vector<NodeIndex> children, ActReason reason = {});
    NodeIndex fact(std::uint32_t unit, StateId state);
    NodeIndex in_states(const ItemRef& ref, StateSet states, ActReason reason);
    NodeIndex left(const ItemRef& ref, StateSet states, ActReason reason);
    NodeIndex off(ItemId part, ActReason reason);
    NodeIndex out_of_the_way(const ItemRef& ref, const Chain& at, ItemId of, Span because);
    NodeIndex reach(ItemId id, const Chain& at, const std::vector<ItemId>& with_it);
    Chain seat_chain(ItemId id) const;

    void add_reach(const Task& task, std::vector<NodeIndex>& all);
    void add_needs(const Task& task, std::vector<NodeIndex>& all);
    void add_live(const Task& task, const std::vector<ItemId>& moved, std::vector<NodeIndex>& all);
    void add_held(const Task& task, const std::vector<ItemId>& moved, std::vector<NodeIndex>& all);
    void add_touched_hazards(const Task& task, std::vector<NodeIndex>& all);
    void add_opened_hazards(std::vector<std::vector<NodeIndex>>& needs);
    void bar_openers(ItemId id, std::size_t use, ItemId open,
                     std::vector<std::vector<NodeIndex>>& needs);
    void add_pressing(const Task& task, std::vector<NodeIndex>& all);
    bool makes_safe(const Task& task, ItemId id, StateSet safe) const;
    [[nodiscard]] bool is_way_to_safety(const Task& task) const;
    NodeIndex goal_node();

    [[nodiscard]] bool leaves(const Task& task) const;
    [[nodiscard]] const Item& item_of(const Task& task) const {
        return model_.item(graph_.units[task.unit].item);
    }

    TaskGraph& graph_;
    const bench::Bench& bench_;
    const Model& model_;
    const WayInGoal& goal_;
    bench::State start_;
    std::map<std::pair<std::uint32_t, StateId>, NodeIndex> facts_;
};

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
    for (const model::ReachClause& clause : model_.item(id).reach) {
        std::vector<NodeIndex> ways;
        for (const auto& way : clause.ways) {
            std::vector<NodeIndex> clear;
            for (const ItemRef& ref : way) {
                if (bench_.exists(ref.item) && !among(with_it, ref.item))
                    clear.push_back(out_of_the_way(ref, at, id, clause.span));
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

void Conditions::add_reach(const Task& task, std::vector<NodeIndex>& all) {
    const ItemId id = graph_.units[task.unit].item;
    const Item& item = model_.item(id);
    const Kind& kind = model_.kind(item.kind);
    if (kind.verbs[task.verb].from_outside || item.reach.empty())
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
    for (const model::Need& need : item.needs) {
        const model::Verb* named = model::find_verb(kind, need.verb);
        const bool asked =
            need.verb == verb.name || (named != nullptr && model::inverts(*named, verb));
        const model::Condition& wanted = need.condition;
        if (asked && bench_.exists(wanted.item.item)) {
            all.push_back(
                in_states(wanted.item, model::in_set(wanted.state),
                          {ReasonSort::needs, {}, wanted.item.item, id, wanted.state, need.span}));
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

void Conditions::add_live(const Task& task, const std::vector<ItemId>& moved,
                          std::vector<NodeIndex>& all) {
    const ItemId id = graph_.units[task.unit].item;
    const Item& item = model_.item(id);
    const bool plug = item.role == Role::connector && graph_.units[task.unit].set == 0;
    if (model_.kind(item.kind).verbs[task.verb].safe_when_live || item.safe_when_live)
        return;
    const bool out = leaves(task);
    std::vector<ItemId> touched = plug ? item.touches : std::vector<ItemId>{};
    if (out)
        touched = moved;
    else if (item.role == Role::part && is_way_to_safety(task))
        touched = {id};
    for (std::uint32_t i = 0; i < model_.items.size(); ++i) {
        const ItemId source{i};
        const Item& from = model_.items[i];
        if (from.feeds.empty() || source == id || among(from.through, id) || !bench_.exists(source))
            continue;
        const auto dead = [&](ItemId part) {
            const ActReason live{ReasonSort::live, {}, source, part, 0, from.span};
            std::vector<NodeIndex> ways{left({source, {}, {}}, model_.kind_of(source).live, live)};
            for (const ItemId by : from.through) {
                if (bench_.exists(by))
                    ways.push_back(left({by, {}, {}}, model_.kind_of(by).binds, live));
            }
            return ways;
        };
        const auto beside = [&](ItemId part) {
            return off(part, {ReasonSort::aside, {}, part, id, 0, from.span});
        };
        for (const ItemId part : touched) {
            if (among(from.feeds, part)) {
                std::vector<NodeIndex> ways = dead(part);
                // What is off already is no longer touched.
                for (ItemId at = part; !plug && at.known() && at != id;
                     at = model_.item(at).carrier)
                    ways.push_back(beside(at));
                all.push_back(add(NodeSort::any, std::move(ways)));
            }
            // What a touched part is in is touched too, until it lies beside it.
            std::vector<NodeIndex> apart;
            for (ItemId at = part; model_.item(at).carrier.known(); at = model_.item(at).carrier) {
                const ItemId carrier = model_.item(at).carrier;
                if (!(out && at == id))
                    apart.push_back(beside(at));
                if (!among(from.feeds, carrier) || among(moved, carrier))
                    continue;
                std::vector<NodeIndex> ways = dead(carrier);
                ways.insert(ways.end(), apart.begin(), apart.end());
                all.push_back(add(NodeSort::any, std::move(ways)));
            }
        }
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
            const bool hangs = !out && holder.role == Role::connector;
            if (hangs || !bench_.exists(tie) || among(seen, tie) ||
                std::all_of(holder.touches.begin(), holder.touches.end(), goes_along))
                continue;
            seen.push_back(tie);
            all.push_back(left({tie, {}, {}}, model_.kind_of(tie).binds,
                               {ReasonSort::holds, {}, tie, part, 0, holder.declaration}));
        }
    }
    for (const ItemId blocker : model_.item(id).blocked_by) {
        if (out && bench_.exists(blocker))
            all.push_back(
                left({blocker, {}, {}}, model_.kind_of(blocker).blocks,
                     {ReasonSort::blocks, {}, blocker, id, 0, model_.item(blocker).declaration}));
    }
}

bool Conditions::is_way_to_safety(const Task& task) const {
    const ItemId id = graph_.units[task.unit].item;
    const auto& hazards = model_.kind_of(id).hazards;
    return std::any_of(hazards.begin(), hazards.end(),
                       [&](const model::HazardUse& use) { return makes_safe(task, id, use.safe); });
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

bool Conditions::makes_safe(const Task& task, ItemId id, StateSet safe) const {
    if (graph_.units[task.unit].item != id)
        return false;
    const Kind& kind = model_.kind_of(id);
    for (std::size_t s = 0; s < kind.states.size(); ++s) {
        if (contains(safe, static_cast<StateId>(s)) && kind.set_of[s] == kind.set_of[task.to])
            return true;
    }
    return false;
}

// Hazards of what the task works on. One that counts only while its item can be reached is asked
// here if it always can.
void Conditions::add_touched_hazards(const Task& task, std::vector<NodeIndex>& all) {
    const ItemId id = graph_.units[task.unit].item;
    const auto& ends = model_.item(id).touches;
    const auto works_on = [&](ItemId part) {
        return part.known() && (part == id || among(ends, part));
    };
    for (std::uint32_t i = 0; i < model_.items.size(); ++i) {
        const ItemId danger{i};
        const Item& item = model_.items[i];
        if (!bench_.exists(danger))
            continue;
        const bool met = item.role == Role::part
                             ? works_on(danger) || (item.reach.empty() && works_on(item.carrier))
                             : id == danger;
        for (const model::HazardUse& use : model_.kind(item.kind).hazards) {
            if (met && !makes_safe(task, danger, use.safe))
                all.push_back(in_states({danger, {}, {}}, use.safe,
                                        {ReasonSort::hazard, {}, danger, id, 0, use.span}));
        }
    }
}

// The tasks that alone lay `open` open have to find the hazard safe.
void Conditions::bar_openers(ItemId id, std::size_t use, ItemId open,
                             std::vector<std::vector<NodeIndex>>& needs) {
    const Item& part = model_.item(open);
    const ItemRef* bar = nullptr;
    const ItemId at = part.role == Role::part ? bench::place(bench_, start_, open)
                                              : bench::seat(bench_, start_, open);
    for (const model::ReachClause& clause : part.reach) {
        if (clause.ways.size() != 1)
            return;
        for (const ItemRef& ref : clause.ways.front()) {
            if (!bench_.exists(ref.item))
                continue;
            const Kind& kind = model_.kind_of(ref.item);
            const bool stands = model::is_tie(kind.role) ? bench::binds(bench_, start_, ref.item)
                                                         : bench::covers(bench_, start_, ref.item);
            if (!stands ||
                (kind.role == Role::part && bench::place(bench_, start_, ref.item) != at))
                continue;
            if (bar != nullptr && bar->item != ref.item)
                return;
            bar = &ref;
        }
    }
    if (bar == nullptr || graph_.units_of[bar->item.value].size() != 1)
        return;
    const Kind& kind = model_.kind_of(bar->item);
    const StateSet bad = model::is_tie(kind.role) ? kind.binds : kind.covers;
    const model::HazardUse& hazard = model_.kind_of(id).hazards[use];
    for (TaskIndex t = 0; t < graph_.tasks.size(); ++t) {
        const Task& task = graph_.tasks[t];
        const bool opens = graph_.units[task.unit].item == bar->item &&
                           graph_.units[task.unit].set == 0 && contains(bad, task.from) &&
                           !contains(bad, task.to);
        if (!opens || makes_safe(task, id, hazard.safe))
            continue;
        std::vector<NodeIndex> ways{in_states({id, {}, {}}, hazard.safe,
                                              {ReasonSort::hazard, {}, id, open, 0, hazard.span})};
        if (part.role == Role::part) // what is gone already is not laid open
            ways.push_back(off(open, {ReasonSort::aside, {}, open, bar->item, 0, hazard.span}));
        needs[t].push_back(add(NodeSort::any, std::move(ways)));
    }
}

void Conditions::add_opened_hazards(std::vector<std::vector<NodeIndex>>& needs) {
    for (std::uint32_t i = 0; i < model_.items.size(); ++i) {
        const ItemId id{i};
        const Kind& kind = model_.kind_of(id);
        const bool outside = std::any_of(kind.verbs.begin(), kind.verbs.end(),
                                         [](const auto& verb) { return verb.from_outside; });
        if (!bench_.exists(id) || (!outside && !model_.items[i].reach.empty()))
            continue;
        const auto opened =
            model_.items[i].feeds.empty() ? std::vector<ItemId>{id} : model_.items[i].feeds;
        for (std::size_t use = 0; use < kind.hazards.size(); ++use) {
            if (!kind.hazards[use].on_reach)
                continue;
            for (const ItemId part : opened) {
                if (bench_.exists(part) && bench::present(bench_, start_, part) &&
                    !bench::reachable(bench_, start_, part))
                    bar_openers(id, use, part, needs);
            }
        }
    }
}

NodeIndex Conditions::goal_node() {
    std::vector<NodeIndex> all;
    for (const ItemId id : goal_.items) {
        const ActReason asked{ReasonSort::goal, {}, id, id, 0, {}};
        const Kind& kind = model_.kind_of(id);
        if (goal_.expose) {
            all.push_back(
                reach(id, kind.role == Role::part ? chain_of(model_, id) : seat_chain(id), {}));
        } else {
            const StateSet in = kind.role == Role::part    ? kind.present
                                : model::is_tie(kind.role) ? kind.binds
                                                           : kind.covers;
            all.push_back(left({id, {}, {}}, in, asked));
        }
    }
    return add(NodeSort::all, std::move(all));
}

void Conditions::build() {
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
    graph_.goal = goal_node();
    graph_.task_of_node.resize(graph_.nodes.size());
}

} // namespace

void add_conditions(TaskGraph& graph, const WayInGoal& goal) { Conditions(graph, goal).build(); }

} // namespace matchmark::plan
