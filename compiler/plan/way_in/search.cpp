// Goes over the bench with a given set of acts: what helps at once, what may do harm by trial.
#include "plan/way_in/search.hpp"

#include "bench/dangerous.hpp"
#include "plan/way_in/closure.hpp"

#include <algorithm>
#include <set>

namespace matchmark::plan {

using model::contains;
using model::Item;
using model::ItemId;
using model::Kind;
using model::Model;
using model::StateSet;

namespace {

// Begins again to cover, bind, block or feed, or is no longer safe.
bool may_always_harm(const TaskGraph& graph, const Task& task) {
    const Unit& unit = graph.units[task.unit];
    const Kind& kind = graph.bench->model->kind_of(unit.item);
    const auto gains = [&](StateSet states) {
        return !contains(states, task.from) && contains(states, task.to);
    };
    return (unit.set == 0 &&
            (gains(kind.covers) || gains(kind.binds) || gains(kind.blocks) || gains(kind.live))) ||
           std::any_of(kind.hazards.begin(), kind.hazards.end(), [&](const auto& use) {
               return contains(use.safe, task.from) && !contains(use.safe, task.to);
           });
}

// For each act, those that ask, by a line of their item or of its kind, for the state that it
// leaves.
std::vector<std::vector<TaskIndex>> spoils_of(const TaskGraph& graph) {
    const Model& model = *graph.bench->model;
    std::vector<std::vector<TaskIndex>> spoils(graph.tasks.size());
    const auto note = [&](TaskIndex asks, ItemId of, const auto& spoilt) {
        for (const std::uint32_t unit : graph.units_of[of.value]) {
            for (const TaskIndex leaver : graph.tasks_of[unit]) {
                auto& list = spoils[leaver];
                if (spoilt(graph.tasks[leaver]) && (list.empty() || list.back() != asks))
                    list.push_back(asks);
            }
        }
    };
    for (TaskIndex t = 0; t < graph.tasks.size(); ++t) {
        const ItemId id = graph.units[graph.tasks[t].unit].item;
        const Item& item = model.item(id);
        const Kind& kind = model.kind(item.kind);
        const model::Verb& verb = kind.verbs[graph.tasks[t].verb];
        for (const model::Need& need : item.needs) {
            const StateSet from = model::in_set(graph.tasks[t].from);
            if (model::counts_for(kind, need, verb, from))
                note(t, need.condition.item.item, [&](const Task& leaver) {
                    return contains(model::states_of(need), leaver.from) &&
                           !contains(model::states_of(need), leaver.to);
                });
        }
        for (const model::OwnNeed& need : kind.needs) {
            if (need.verb == verb.name)
                note(t, id, [&](const Task& leaver) {
                    return contains(need.states, leaver.from) && !contains(need.states, leaver.to);
                });
        }
    }
    return spoils;
}

// Does the act, in the first set of states, take its unit out of these?
bool leaves(const TaskGraph& graph, const Task& task, StateSet states) {
    return graph.units[task.unit].set == 0 && contains(states, task.from) &&
           !contains(states, task.to);
}

// The acts that could clear one bar: members of `ref` that move alike, with all that carries the
// one or the other of them alone.
std::vector<TaskIndex> movers_of(const TaskGraph& graph, std::uint32_t unit,
                                 const std::vector<ItemId>& own) {
    const Model& model = *graph.bench->model;
    const ItemId bar = graph.units[unit].item;
    const Kind& kind = model.kind_of(bar);
    std::vector<TaskIndex> movers;
    for (const TaskIndex task : graph.tasks_of[unit]) {
        if (leaves(graph, graph.tasks[task], model::is_tie(kind.role) ? kind.binds : kind.covers))
            movers.push_back(task);
    }
    if (kind.role != model::Role::part)
        return movers;
    const auto chain = chain_of(model, bar);
    for (TaskIndex t = 0; t < graph.tasks.size(); ++t) {
        const ItemId item = graph.units[graph.tasks[t].unit].item;
        if (among(chain, item) != among(own, item) &&
            leaves(graph, graph.tasks[t], model.kind_of(item).present))
            movers.push_back(t);
    }
    return movers;
}

// What stands in the way to the item at the start, and the acts that could clear it.
Risks::Cover cover_of(const TaskGraph& graph, ItemId id) {
    const Model& model = *graph.bench->model;
    const bench::State start = bench::assembled(*graph.bench);
    Risks::Cover cover;
    cover.moved_by.resize(graph.tasks.size());
    auto own = chain_of(model, id);
    for (const ItemId part : model.item(id).touches) {
        const auto more = chain_of(model, part);
        own.insert(own.end(), more.begin(), more.end());
    }
    own.erase(own.begin()); // gone itself, it is not laid open
    for (const model::ReachClause& clause : model.item(id).reach) {
        auto& ways = cover.bars.emplace_back();
        for (const auto& way : clause.ways) {
            auto& bars = ways.emplace_back();
            for (const auto& ref : way) {
                const bool stands = model::is_tie(model.item(ref.item).role)
                                        ? bench::binds(*graph.bench, start, ref.item)
                                        : bench::covers(*graph.bench, start, ref.item);
                for (const std::uint32_t unit : graph.units_of[ref.item.value]) {
                    const auto& named = ref.members;
                    const bool meant = named.empty() ||
                                       std::find(named.begin(), named.end(),
                                                 graph.units[unit].members.front()) != named.end();
                    if (stands && meant && graph.units[unit].set == 0)
                        bars.push_back(movers_of(graph, unit, own));
                }
            }
            for (const auto& movers : bars) {
                for (const TaskIndex task : movers)
                    cover.moved_by[task] = true;
            }
        }
    }
    return cover;
}

// Could the bars be left shut one by one? Not where a carrier is a group that moves in parts.
bool can_be_left_shut(const TaskGraph& graph, ItemId id) {
    const Model& model = *graph.bench->model;
    const auto one_piece = [&](ItemId item) {
        const auto chain = chain_of(model, item);
        return std::all_of(chain.begin(), chain.end(),
                           [&](ItemId at) { return at == item || model.item(at).count == 1; });
    };
    // A tie lies where its parts are. It cannot be parted by hand unseen, nor can they be moved
    // away from each other while it binds.
    const auto& parts = model.item(id).touches;
    if (!one_piece(id) || !std::all_of(parts.begin(), parts.end(), one_piece))
        return false;
    for (const auto& clause : model.item(id).reach) {
        for (const auto& way : clause.ways) {
            if (!std::all_of(way.begin(), way.end(),
                             [&](const auto& ref) { return one_piece(ref.item); }))
                return false;
        }
    }
    return true;
}

// Is there, for each line, a way of which every bar could be moved?
bool could_open(const Risks::Cover& cover, const std::vector<bool>& allowed) {
    const auto movable = [&](const std::vector<TaskIndex>& bar) {
        return std::any_of(bar.begin(), bar.end(), [&](TaskIndex task) { return allowed[task]; });
    };
    return std::all_of(cover.bars.begin(), cover.bars.end(), [&](const auto& ways) {
        return std::any_of(ways.begin(), ways.end(), [&](const auto& bars) {
            return std::all_of(bars.begin(), bars.end(), movable);
        });
    });
}

class Walker {
public:
    Walker(const TaskGraph& graph, const Risks& risks, const WayInGoal& goal,
           const std::vector<bool>& allowed, std::size_t most_branches)
        : graph_(graph), risks_(risks), goal_(goal), allowed_(allowed),
          branches_left_(most_branches) {
        for (TaskIndex t = 0; t < allowed.size(); ++t) {
            if (allowed[t])
                tasks_.push_back(t);
        }
    }

    // From the assembled device, with these acts done already.
    Search run(const std::vector<TaskIndex>& done) {
        Search result;
        const std::size_t most = branches_left_;
        bench::State state = bench::assembled(*graph_.bench);
        Closure closure(graph_);
        for (const TaskIndex task : done) {
            bench::perform(*graph_.bench, state, graph_.tasks[task].act);
            closure.allow(task);
        }
        const bool found = visit(std::move(state), std::move(closure), result.order);
        result.answer = found ? Answer::yes : ran_out_ ? Answer::unknown : Answer::no;
        result.branches = most - branches_left_;
        return result;
    }

private:
    bool can(const bench::State& state, const Closure& closure, TaskIndex task) const {
        const Task& what = graph_.tasks[task];
        return !closure.allowed(task) && state.slots[graph_.units[what.unit].slot] == what.from &&
               closure.ready(task) && possible(graph_, state, task);
    }
    void perform(bench::State& state, Closure& closure, std::vector<TaskIndex>& order,
                 TaskIndex task) const {
        bench::perform(*graph_.bench, state, graph_.tasks[task].act);
        closure.allow(task);
        order.push_back(task);
    }
    bool visit(bench::State state, Closure closure, std::vector<TaskIndex>& order);

    const TaskGraph& graph_;
    const Risks& risks_;
    const WayInGoal& goal_;
    const std::vector<bool>& allowed_;
    std::vector<TaskIndex> tasks_;
    std::size_t branches_left_;
    bool ran_out_ = false;
    std::set<std::vector<model::StateId>> seen_;
};

bool Walker::visit(bench::State state, Closure closure, std::vector<TaskIndex>& order) {
    const bench::Bench& on = *graph_.bench;
    for (bool moved = true; moved;) {
        moved = false;
        if (goal_met(on, state, goal_))
            return true;
        for (const TaskIndex task : tasks_) {
            if (can(state, closure, task) && !risky(graph_, risks_, state, allowed_, task)) {
                perform(state, closure, order, task);
                moved = true;
            }
        }
    }
    if (!seen_.insert(state.slots).second)
        return false;
    for (const TaskIndex task : tasks_) {
        if (!can(state, closure, task))
            continue;
        if (branches_left_ == 0) {
            ran_out_ = true;
            return false;
        }
        --branches_left_;
        bench::State after = state;
        Closure follows = closure;
        const std::size_t done = order.size();
        perform(after, follows, order, task);
        if (visit(std::move(after), std::move(follows), order))
            return true;
        order.resize(done);
    }
    return false;
}

} // namespace

namespace {

// A part may go unseen from outside, or with what covers it.
void add_taken_unseen(const TaskGraph& graph, ItemId part, Risks::Cover& cover) {
    const Model& model = *graph.bench->model;
    const auto along = carried_by(*graph.bench, part);
    bool covered_by_its_own = false;
    for (const auto& clause : model.item(part).reach) {
        for (const auto& way : clause.ways) {
            for (const auto& ref : way)
                covered_by_its_own = covered_by_its_own ||
                                     std::find(along.begin(), along.end(), ref.item) != along.end();
        }
    }
    for (TaskIndex t = 0; t < graph.tasks.size(); ++t) {
        const Task& task = graph.tasks[t];
        const ItemId item = graph.units[task.unit].item;
        const Kind& kind = model.kind_of(part);
        const StateSet there = model::is_tie(kind.role) ? kind.binds : kind.present;
        if (item == part && leaves(graph, task, there) &&
            (covered_by_its_own || model.kind_of(part).verbs[task.verb].from_outside))
            cover.taken_unseen.push_back(t);
    }
}

// What of the danger depends on how far something lies open: work through its carrier, and being
// laid open.
void add_covers(const TaskGraph& graph, const model::HazardUse& use, Risks::Danger& danger) {
    const bench::Bench& on = *graph.bench;
    const Item& item = on.model->item(danger.item);
    const Kind& kind = on.model->kind(item.kind);
    const bench::State start = bench::assembled(on);
    const auto hidden = [&](ItemId id) {
        return on.exists(id) && !bench::reachable(on, start, id);
    };
    const bool outside = std::any_of(kind.verbs.begin(), kind.verbs.end(),
                                     [](const auto& verb) { return verb.from_outside; });
    const bool by_carrier = item.role == model::Role::part && item.carrier.known();
    if (hidden(danger.item) && (by_carrier || (use.on_reach && !outside)))
        danger.covers.push_back(cover_of(graph, danger.item));
    if (!use.on_reach)
        return;
    auto opened = item.feeds.empty() ? std::vector<ItemId>{danger.item} : item.feeds.all();
    opened.insert(opened.end(), item.feeding->bare_ends.begin(), item.feeding->bare_ends.end());
    for (const ItemId part : opened) {
        if (!hidden(part))
            continue;
        danger.covers.push_back(cover_of(graph, part));
        danger.covers.back().must_stay_shut =
            (outside || item.reach.empty()) && can_be_left_shut(graph, part);
        add_taken_unseen(graph, part, danger.covers.back());
    }
}

} // namespace

Risks risks_of(const TaskGraph& graph) {
    const Model& model = *graph.bench->model;
    Risks risks;
    risks.spoils = spoils_of(graph);
    for (const Task& leaver : graph.tasks)
        risks.always.push_back(may_always_harm(graph, leaver));
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const ItemId id{i};
        const Kind& kind = model.kind_of(id);
        for (const model::HazardUse& use : kind.hazards) {
            if (!graph.bench->exists(id))
                continue;
            Risks::Danger danger{id, use.safe, {}, {}};
            add_covers(graph, use, danger);
            for (TaskIndex t = 0; t < graph.tasks.size(); ++t) {
                StateSet set = 0;
                for (std::size_t s = 0; s < kind.states.size(); ++s) {
                    if (kind.set_of[s] == graph.units[graph.tasks[t].unit].set)
                        set |= model::in_set(static_cast<model::StateId>(s));
                }
                if (graph.units[graph.tasks[t].unit].item == id && (use.safe & set) != 0)
                    danger.makers.push_back(t);
            }
            risks.dangers.push_back(std::move(danger));
        }
    }
    return risks;
}

bool risky(const TaskGraph& graph, const Risks& risks, const bench::State& state,
           const std::vector<bool>& allowed, TaskIndex task) {
    if (risks.always[task])
        return true;
    const auto& spoils = risks.spoils[task];
    const bool spoiled = std::any_of(spoils.begin(), spoils.end(), [&](TaskIndex other) {
        const Task& asks = graph.tasks[other];
        return allowed[other] && state.slots[graph.units[asks.unit].slot] <= asks.from &&
               asks.unit != graph.tasks[task].unit;
    });
    if (spoiled)
        return true;
    const Task& what = graph.tasks[task];
    for (const TaskIndex other : graph.tasks_of[what.unit]) {
        const Task& rival = graph.tasks[other];
        if (allowed[other] && rival.from == what.from && rival.to != what.to)
            return true;
    }
    return std::any_of(risks.dangers.begin(), risks.dangers.end(), [&](const Risks::Danger& one) {
        if (std::find(one.makers.begin(), one.makers.end(), task) != one.makers.end() ||
            bench::made_safe(*graph.bench, state, one.item, one.safe))
            return false;
        return std::any_of(one.covers.begin(), one.covers.end(), [&](const Risks::Cover& cover) {
            return cover.moved_by[task] && could_open(cover, allowed);
        });
    });
}

bool possible(const TaskGraph& graph, const bench::State& state, TaskIndex task) {
    const bench::Bench& on = *graph.bench;
    const bench::Act& act = graph.tasks[task].act;
    if (bench::refusal(on, state, act))
        return false;
    const bool all_safe =
        std::all_of(graph.dangers.begin(), graph.dangers.end(), [&](const Danger& danger) {
            return bench::made_safe(on, state, danger.item, danger.safe);
        });
    if (all_safe)
        return true;
    bench::State after = state;
    bench::perform(on, after, act);
    return !bench::exposure(on, state, after, act);
}

Search search(const TaskGraph& graph, const Risks& risks, const WayInGoal& goal,
              const std::vector<bool>& allowed, std::size_t most_branches,
              const std::vector<TaskIndex>& done) {
    return Walker(graph, risks, goal, allowed, most_branches).run(done);
}

} // namespace matchmark::plan
