// Can the goal be reached on the bench with no other acts than these?
//
// Most acts can only help: done as soon as they can be, they leave nothing worse off. Those that
// may do harm (they leave a state that another act needs, or could lay a danger open) are tried at
// every point, so the answer is exact.
#pragma once

#include "plan/way_in/tasks.hpp"

namespace matchmark::plan {

// What of the device makes an act one that may do harm.
struct Risks {
    // A thing that must not be laid open while it is dangerous. Each bar in its way: what moves it.
    struct Cover {
        std::vector<std::vector<std::vector<std::vector<TaskIndex>>>> bars; // by line, way, bar
        std::vector<bool> moved_by;                                         // by task
        std::vector<TaskIndex> taken_unseen; // acts from outside that take the thing away
        bool must_stay_shut = false; // laid open unsafe, it could always have been made safe
    };
    struct Danger {
        model::ItemId item;
        model::StateSet safe = 0;
        std::vector<Cover> covers;
        std::vector<TaskIndex> makers; // acts in the set of states in which safety lies
    };
    std::vector<bool> always;                   // by task
    std::vector<std::vector<TaskIndex>> spoils; // by task: those that ask for the state it leaves
    std::vector<Danger> dangers;
};

Risks risks_of(const TaskGraph& graph);
// Does the act, as things stand, possibly do harm? `allowed`: what else may be done.
bool risky(const TaskGraph& graph, const Risks& risks, const bench::State& state,
           const std::vector<bool>& allowed, TaskIndex task);
// Refused by the bench, or a danger met unprepared?
bool possible(const TaskGraph& graph, const bench::State& state, TaskIndex task);

enum class Answer : unsigned char { yes, no, unknown };

struct Search {
    Answer answer = Answer::unknown;
    std::vector<TaskIndex> order; // of the acts done, when it is yes
    std::size_t branches = 0;     // tried
};

// `most_branches`: after so many the answer is unknown. `done`: acts done before, in order; they
// are among those allowed, and not in the order given.
Search search(const TaskGraph& graph, const Risks& risks, const WayInGoal& goal,
              const std::vector<bool>& allowed, std::size_t most_branches,
              const std::vector<TaskIndex>& done = {});

} // namespace matchmark::plan
