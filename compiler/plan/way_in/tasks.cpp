// Lists what could be done to a device: its units, and the verbs that lead outwards.
#include "plan/way_in/tasks.hpp"

#include "model/fitting.hpp"
#include "model/spelling.hpp"
#include "plan/way_in/conditions.hpp"
#include "plan/work_time.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace matchmark::plan {

using model::contains;
using model::Item;
using model::ItemId;
using model::ItemRef;
using model::Kind;
using model::Model;

namespace {

using Members = std::vector<std::uint16_t>;

// The members that some line names apart from the others of their group, by item.
std::map<ItemId, std::set<Members>> named_apart(const Model& model) {
    std::map<ItemId, std::set<Members>> named;
    const auto note = [&](const ItemRef& ref) {
        if (ref.item.known() && !ref.members.empty())
            named[ref.item].insert(ref.members);
    };
    for (const Item& item : model.items) {
        for (const auto& clause : item.reach) {
            for (const auto& way : clause.ways)
                std::for_each(way.begin(), way.end(), note);
        }
        for (const auto& need : item.needs)
            note(need.condition.item);
    }
    return named;
}

// Members that the same lines name move alike.
std::vector<Members> classes_of(const Item& item, const std::set<Members>& named) {
    std::map<std::vector<bool>, Members> classes;
    for (std::uint16_t member = 1; member <= item.count; ++member) {
        std::vector<bool> in;
        for (const Members& group : named)
            in.push_back(std::find(group.begin(), group.end(), member) != group.end());
        classes[in].push_back(member);
    }
    std::vector<Members> found;
    for (auto& [in, members] : classes)
        found.push_back(std::move(members));
    std::sort(found.begin(), found.end());
    return found;
}

void add_units(TaskGraph& graph) {
    const Model& model = *graph.bench->model;
    const auto named = named_apart(model);
    graph.units_of.resize(model.items.size());
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const ItemId id{i};
        if (!graph.bench->exists(id))
            continue;
        const auto apart = named.find(id);
        const auto classes =
            classes_of(model.item(id), apart == named.end() ? std::set<Members>{} : apart->second);
        for (const Members& members : classes) {
            for (unsigned set = 0; set < model.kind_of(id).set_count(); ++set) {
                Unit unit{id, set, members, classes.size() == 1, 0};
                const auto first = static_cast<std::uint16_t>(members.front() - 1U);
                unit.slot = bench::slot(model, id, first, set);
                graph.units_of[i].push_back(static_cast<std::uint32_t>(graph.units.size()));
                graph.units.push_back(std::move(unit));
            }
        }
    }
}

// What goes along when a part is moved, up to so many that acts still count for more. Of ways that
// take as long in as many acts, the one that moves least is what a bench would choose: the cover
// comes off the frame, not the frame with all that is in it from the cover.
std::int64_t carried_along(const bench::Bench& bench, const Unit& unit) {
    constexpr std::size_t most = 99;
    const bool moves = bench.model->item(unit.item).role == model::Role::part && unit.set == 0;
    return moves
               ? static_cast<std::int64_t>(std::min(carried_by(bench, unit.item).size() - 1, most))
               : 0;
}

void add_tasks(TaskGraph& graph) {
    const Model& model = *graph.bench->model;
    const WorkTimes times(model);
    graph.tasks_of.resize(graph.units.size());
    for (std::uint32_t u = 0; u < graph.units.size(); ++u) {
        const Unit& unit = graph.units[u];
        const Item& item = model.item(unit.item);
        const Kind& kind = model.kind(item.kind);
        const std::int64_t along = carried_along(*graph.bench, unit);
        for (std::size_t v = 0; v < kind.verbs.size(); ++v) {
            const model::Verb& verb = kind.verbs[v];
            if (kind.set_of[verb.to] != unit.set)
                continue;
            for (model::StateId from = 0; from < verb.to; ++from) {
                const bool goes_in = unit.set == 0 && contains(kind.present, verb.to) &&
                                     !contains(kind.present, from);
                if (!contains(verb.from, from) || goes_in)
                    continue;
                Task task;
                task.unit = u;
                task.verb = static_cast<std::uint16_t>(v);
                task.from = from;
                task.to = verb.to;
                task.act = {unit.item, task.verb, unit.whole ? Members{} : unit.members, true};
                const double alone = times.act(item.kind, v, unit.members.size()).alone();
                task.weight =
                    std::llround(alone * 1000) * (weight_of_second / 1000) + weight_of_act + along;
                task.tools = tools_for(model, item, verb);
                graph.tasks_of[u].push_back(static_cast<TaskIndex>(graph.tasks.size()));
                graph.tasks.push_back(std::move(task));
            }
        }
    }
}

} // namespace

std::vector<std::string> tools_for(const Model& model, const Item& item, const model::Verb& verb) {
    std::vector<std::string> tools;
    if (!model::asks_tool(verb))
        return tools;
    const auto drive = std::find_if(model.drives.begin(), model.drives.end(),
                                    [&](const auto& one) { return one.name == item.bolt->drive; });
    const std::string size = item.bolt->drive_size.empty() ? "" : " " + item.bolt->drive_size;
    if (verb.by_driver && drive != model.drives.end()) {
        for (const std::string& name : drive->driven_by)
            tools.push_back(model::spaced(name) + size);
    } else if (verb.by_driver) {
        tools.emplace_back("driver");
    }
    for (const std::string& name : verb.tools)
        tools.push_back(model::spaced(model::sized_tool(model, item, name)));
    return tools;
}

std::vector<ItemId> chain_of(const Model& model, ItemId item) {
    std::vector<ItemId> chain;
    for (ItemId at = item; at.known(); at = model.item(at).carrier)
        chain.push_back(at);
    return chain;
}

std::vector<ItemId> carried_by(const bench::Bench& bench, ItemId part) {
    std::vector<ItemId> all{part};
    for (std::size_t i = 0; i < all.size(); ++i) {
        for (const ItemId carried : bench.model->item(all[i]).carried) {
            if (bench.exists(carried))
                all.push_back(carried);
        }
    }
    return all;
}

model::StateSet other_states(const Kind& kind, model::StateSet states) {
    model::StateSet others = 0;
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        const auto state = static_cast<model::StateId>(i);
        if (kind.set_of[i] == 0 && !contains(states, state))
            others |= model::in_set(state);
    }
    return others;
}

TaskGraph task_graph(const bench::Bench& bench, const WayInGoal& goal) {
    std::vector<NodeIndex> goal_nodes;
    return task_graph(bench, {goal}, {}, goal_nodes);
}

TaskGraph task_graph(const bench::Bench& bench, const std::vector<WayInGoal>& goals,
                     const std::vector<Relation>& relations, std::vector<NodeIndex>& goal_nodes) {
    TaskGraph graph;
    graph.bench = &bench;
    add_units(graph);
    add_tasks(graph);
    for (std::uint32_t i = 0; i < bench.model->items.size(); ++i) {
        for (const model::HazardUse& use : bench.model->kind_of(ItemId{i}).hazards) {
            if (bench.exists(ItemId{i}))
                graph.dangers.push_back({ItemId{i}, use.safe});
        }
    }
    goal_nodes = add_conditions(graph, goals, relations);
    graph.goal = goal_nodes.empty() ? 0 : goal_nodes.front();
    finish(graph);
    return graph;
}

bool goal_met(const bench::Bench& bench, const bench::State& state, const WayInGoal& goal) {
    return std::all_of(goal.items.begin(), goal.items.end(), [&](ItemId id) {
        if (goal.expose)
            return bench::reachable(bench, state, id);
        const model::Role role = bench.model->item(id).role;
        if (role == model::Role::part)
            return !bench::present(bench, state, id);
        return model::is_tie(role) ? !bench::binds(bench, state, id)
                                   : !bench::covers(bench, state, id);
    });
}

} // namespace matchmark::plan
