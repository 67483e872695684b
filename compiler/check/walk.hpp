// One walk of a procedure over the bench: what was done, in which state, and what stood against it.
//
// The rules read this record. After a refusal the walk goes on as if what was missing had been done
// just before.
#pragma once

#include "bench/dangerous.hpp"
#include "bench/missing.hpp"
#include "bench/work.hpp"
#include "check/history.hpp"
#include "diagnostics/diagnostic.hpp"

#include <limits>
#include <optional>
#include <variant>
#include <vector>

namespace matchmark::check {

// One thing that happens: a verb on one target, an action of the compiler's own, or a test.
struct Event {
    std::uint32_t step = 0;
    std::optional<std::uint32_t> action; // none: the step is a test
    std::uint32_t target = 0;            // of a verb's action
    std::optional<bench::Act> act;       // of a verb's action
};

struct StillInPlace {}; // renewed while it is still on
struct NotReady {       // a test or a measurement whose condition does not hold
    model::ItemId item;
    model::StateSet states = 0;
    Span condition;
};
using Objection = std::variant<bench::Refusal, bench::Exposure, StillInPlace, NotReady>;

// What came off and never went back, and the last point at which it still could have.
struct LeftOff {
    std::size_t at = 0;     // put back just before this event at the latest; the count: at the end
    bool closed_in = false; // because that event covers it
    std::vector<model::ItemId> items;
    std::vector<bench::Act> acts; // that put them back, in order; empty: nothing does
};

struct Trouble {
    std::size_t event = 0;
    Objection objection;
    std::vector<bench::Act> missing; // what would have made it possible; done by the walk
    std::vector<Span> done_later;    // lines that do it after all, too late
    std::size_t mend_at = 0;         // the event before which the missing acts belong
    bool is_echo = false; // told with another: check/joined_troubles.hpp, or two lines swapped
    // Of what the guide itself never moves: where the walk, at its end, brings it back.
    std::vector<LeftOff> way_back = {};
};

struct Walk {
    const SourceMap& sources;
    const model::Model& model;
    const model::Procedure& procedure;
    bench::Bench bench;
    std::vector<Event> events;
    History history;
    std::vector<Trouble> troubles;
    std::vector<LeftOff> left_off; // by place; put back by the walk, as if they had been mended
    bench::State end;
    bench::Dangers dangers; // of the device as assembled

    [[nodiscard]] const model::Guide& guide() const { return model.guide(procedure.guide); }
    [[nodiscard]] const model::Step& step(const Event& event) const {
        return procedure.steps[event.step];
    }
    [[nodiscard]] const model::Action* action(const Event& event) const {
        return event.action ? &step(event).actions[*event.action] : nullptr;
    }
    // The state before event `index`; past the last: the end. It holds until the next call.
    [[nodiscard]] const bench::State& state_at(std::size_t index) const {
        return index < events.size() ? history.before(index) : end;
    }
    [[nodiscard]] const bench::State& before(const Event& event) const {
        return history.before(static_cast<std::size_t>(&event - events.data()));
    }
};

Walk walk(const SourceMap& sources, const model::Model& model, const model::Procedure& procedure,
          unsigned variant);

// What the author does with a slot from event `from` on: the states in which the next act expects
// it.
bench::Wish wish_from(const Walk& walk, std::size_t from);

// Did the walk itself move the item, where an act was missing before a put-back that is derived?
// Once the missing line is written, its way back is derived too: what follows from its lack is an
// echo.
bool moved_by_walk(const Walk& walk, model::ItemId item);

// Does the test wait for an item that the walk itself moved? Its place was then found on a way back
// that lacks the same line, and will be another.
bool displaced(const Walk& walk, const model::Step& test);

// The state before event `until` (the count of events: the end), were these acts done just before
// event `at`; nothing when they cannot be done there, or something after them then could not.
std::optional<bench::State> replay(const Walk& walk, std::size_t at,
                                   const std::vector<bench::Act>& acts, std::size_t until);

// The walk with these acts done just before event `at`: its later states, up to event `until`, are
// those that follow.
void patch(Walk& walk, std::size_t at, const std::vector<bench::Act>& acts, std::size_t until);

// The last act before the event that brought the item to its place, if it was away before it.
std::optional<std::size_t> fitted_before(const Walk& walk, std::size_t event, model::ItemId item);

// Would the acts undo a step of a way back on which the next line of the same item goes on? Then
// the line at the event is in the wrong place, and not what it meets.
bool undoes_what_goes_on(const Walk& walk, std::size_t event, const std::vector<bench::Act>& acts);

// Does any of the acts take something away from where it belongs?
bool takes_apart(const Walk& walk, const std::vector<bench::Act>& acts);

// The event in which the item last left its assembled state, of those before the given one.
std::optional<std::size_t> last_left(const Walk& walk, model::ItemId item,
                                     std::size_t before = std::numeric_limits<std::size_t>::max());

} // namespace matchmark::check
