// The way in: the least that has to be done to bring parts out, or only within reach, with a proof
// that less will not do.
//
// What a way in is, how it is found and what the proof rests on: docs/planning.md. The bench
// decides what is possible here as everywhere.
#pragma once

#include "bench/bench.hpp"
#include "plan/work_time.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::plan {

// When what stands in a part that is asked for is let out: a part that is renewed comes without.
enum class Emptying : unsigned char {
    none,
    before_out,    // before the part comes out
    before_untied, // and before a tie of it is undone
};

struct WayInGoal {
    std::vector<model::ItemId> items;
    bool expose =
        false; // within reach is enough; else a part is out, a tie parted, a fluid drained
    Emptying emptying = Emptying::none;
};

// One line of work: a verb on all members that move alike.
struct PlannedAct {
    bench::Act act;
    model::StateId from = 0;
    double seconds = 0;    // usual time, all members together; no change of tool, no turning
    double waiting = 0;    // time that passes by itself
    std::string tool;      // as a list of tools would have it; empty: done by hand
    std::string face = {}; // the side on which it is done; empty: any
    ActTime time = {};     // where it stands in the work
};

// What another thing in the way, or the goal, has to do with an act.
enum class ReasonSort : unsigned char {
    goal,     // it is what was asked for
    holds,    // the item ties the next one down
    covers,   // the item is in the way to the next one
    aside,    // with the item out, what covers the next one is elsewhere
    blocks,   // the next one cannot pass it
    needs,    // the next one's verb asks for that state of it
    live,     // while it is so, the next one is under power
    hazard,   // it makes safe what the next one meets
    by_way_of // the next act on it starts from that state
};

// Why an act is done: for the sake of another act of the way in, or of the goal.
struct ActReason {
    ReasonSort sort = ReasonSort::goal;
    std::optional<std::size_t> for_act; // index into acts; none: the goal
    model::ItemId item;                 // what stands in the way (the cover, the tie, the source)
    model::ItemId met;                  // for which item: what is covered, held, fed
    model::StateId state = 0;           // needs: the state asked for
    Span because;                       // the declaration that says so; may be unknown
};

enum class Proof : unsigned char { least, bounded, impossible, unknown };

// What cannot be got past, when there is no way: each act waits for the next one's, and the last
// for nothing that could be done, or, in a ring, for one further up.
struct Obstacle {
    model::ItemId item;       // what is to be worked on
    ActReason reason;         // what it waits for
    bool closes_ring = false; // an earlier line waits for this one
    bool no_verb = false;     // nothing ever brings that about
};

struct WayIn {
    Proof proof = Proof::unknown;
    std::vector<PlannedAct> acts;   // in an order that the bench allows
    std::vector<ActReason> reasons; // one for each act
    double seconds = 0;             // usual time of all acts: what is least
    double labour_seconds = 0;      // the same with changes of tool and turnings
    double waiting = 0;
    double back_seconds = 0; // labour of putting all back, estimated by the inverse verbs
    double back_waiting = 0;
    double at_least_seconds = 0;  // no way in takes less; equal to `seconds` when it is proved
    std::size_t proofs = 0;       // sets of acts, of each of which any way in has to do one
    std::size_t with_choice = 0;  // of these, those that leave a choice
    std::size_t tool_changes = 0; // times that a tool is taken up
    std::size_t tool_changes_at_least = 0; // no order of these acts has fewer
    std::size_t turnings = 0;              // times that the device is turned to another side
    std::size_t turnings_at_least = 0;     // no order with the fewest changes of tool has fewer
    std::string
        orders; // in how many orders the acts can be done; empty: not asked, or past counting
    std::vector<Obstacle> obstacles;
};

struct WayInLimits {
    std::optional<double> seconds; // none: as long as it takes, and the same answer every time
    bool count_orders = false;
    bool by_reason = false; // the acts in order of their reasons, not of the tools, if they can be
};

WayIn way_in(const bench::Bench& bench, const WayInGoal& goal, const WayInLimits& limits = {});

// The chain from an act to the goal, a line each, in plain words: "they hold the display lid".
std::vector<std::string> why(const model::Model& model, const WayIn& way, std::size_t act);
// One line for each obstacle: "the left bush waits for the pivot pin, which holds it".
std::vector<std::string> why_not(const model::Model& model, const WayIn& way);

} // namespace matchmark::plan
