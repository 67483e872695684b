// What could be done to a device on the way in, and what each act waits for, as a graph of `all`
// and `any`.
//
// The graph is a relaxation: what it leaves out (conditions that an act can undo again, hazards
// that depend on how far a thing lies open) can only make a way in longer. So its bounds hold, and
// the bench has the last word.
#pragma once

#include "plan/relations.hpp"
#include "plan/way_in/way_in.hpp"

#include <cstdint>
#include <map>

namespace matchmark::plan {

using NodeIndex = std::uint32_t;
using TaskIndex = std::uint32_t;

// Members of an item that no line tells apart, in one set of states.
struct Unit {
    model::ItemId item;
    unsigned set = 0;
    std::vector<std::uint16_t> members; // from 1
    bool whole = false;                 // all members of the item
    std::uint32_t slot = 0;             // of the first of them
};

enum class NodeSort : unsigned char { all, any, fact, task };

struct Node {
    NodeSort sort = NodeSort::all;
    std::vector<NodeIndex> children;
    ActReason reason; // of a node that stands for one obstacle; sort goal: none
};

// One verb from one state, on a unit. Every task leads to a state declared after the one it leaves.
struct Task {
    std::uint32_t unit = 0;
    std::uint16_t verb = 0;
    model::StateId from = 0;
    model::StateId to = 0;
    bench::Act act;
    std::int64_t weight = 0; // milliseconds, then acts, then what is carried along: as one number
    std::vector<std::string> tools;
    NodeIndex needs = 0; // its conditions but for the from-state
    NodeIndex done = 0;  // the task's own node
};

// What is dangerous until it is in one of these states.
struct Danger {
    model::ItemId item;
    model::StateSet safe = 0;
};

struct TaskGraph {
    const bench::Bench* bench = nullptr;
    std::vector<Unit> units;
    std::vector<std::vector<std::uint32_t>> units_of; // by item
    std::vector<Task> tasks;                          // in order of declaration
    std::vector<std::vector<TaskIndex>> tasks_of;     // by unit
    std::vector<Node> nodes;
    std::vector<TaskIndex> task_of_node; // of task nodes
    NodeIndex goal = 0;
    std::vector<Danger> dangers;
    std::vector<std::vector<NodeIndex>> above; // the nodes that wait for each node
    std::vector<std::uint32_t> width;          // how many acts a cut through it has at most
    std::vector<std::uint32_t> waits;          // children still out before anything is done
    // When relations were given: which conditions go when one of them goes, and the reverse.
    std::vector<std::vector<NodeIndex>> conditions_of; // by relation
    std::vector<std::vector<RelationIndex>> rests_on;  // by node
    std::vector<NodeIndex> let_go;                     // conditions that are not asked for now
};

constexpr std::int64_t weight_of_second = 100'000'000'000;
constexpr std::int64_t weight_of_act = 10'000;
// Whole ones: what is left counts acts and what they carry along.
constexpr std::int64_t milliseconds_of(std::int64_t weight) {
    return weight / (weight_of_second / 1000);
}

// The chain of carriers, the item itself first.
std::vector<model::ItemId> chain_of(const model::Model& model, model::ItemId item);
// The part with all that it could carry.
std::vector<model::ItemId> carried_by(const bench::Bench& bench, model::ItemId part);
// The kind's states in the first set that are not among these.
model::StateSet other_states(const model::Kind& kind, model::StateSet states);

// Fills `above`, `width` and `waits`.
void finish(TaskGraph& graph);

// What an act asks for, as a list of tools would have it ("hexalobular driver 6"): any of these.
std::vector<std::string> tools_for(const model::Model& model, const model::Item& item,
                                   const model::Verb& verb);

TaskGraph task_graph(const bench::Bench& bench, const WayInGoal& goal);
// One graph for several goals, whose nodes are given; `goal` is the first of them.
TaskGraph task_graph(const bench::Bench& bench, const std::vector<WayInGoal>& goals,
                     const std::vector<Relation>& relations, std::vector<NodeIndex>& goal_nodes);

// Is what was asked for so?
bool goal_met(const bench::Bench& bench, const bench::State& state, const WayInGoal& goal);

} // namespace matchmark::plan
