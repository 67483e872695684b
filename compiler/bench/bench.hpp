// The bench: the state of every item as the work goes on. `apply` does an action, or says why it
// cannot be done.
//
// The rules are those of docs/semantics.md. The checker, the derived put-back, the mends and the
// drawings all ask here; nothing else has an idea of its own of what is possible.
#pragma once

#include "model/model.hpp"

#include <optional>
#include <variant>
#include <vector>

namespace matchmark::bench {

using model::ItemId;
using model::Model;
using model::StateId;
using model::StateSet;

// What has happened to a member beside its state.
enum MemberFlag : std::uint8_t {
    spent = 1,   // left its assembled state and was not renewed
    renewed = 2, // is a new one
    marked = 4,
    disposed = 8,
    given_up = 16, // scrapped or left off on purpose
};

struct State {
    std::vector<StateId> slots;      // for each item, member and set of states
    std::vector<std::uint8_t> flags; // for each member, MemberFlag bits
    friend bool operator==(const State&, const State&) = default;
};

// One verb on one item (all its members, or some).
struct Act {
    ItemId item;
    std::uint16_t verb = 0;
    model::SeldomList<std::uint16_t> members; // from 1; empty: all that stand in the from-state
    bool supplied = false;                    // a supply or spare that renews it is at hand
    model::SeldomList<ItemId> lifted_after =
        {}; // what lies loose under the part, and comes off after it
    friend bool operator==(const Act&, const Act&) = default;
};

// The device in one of its variants.
struct Bench {
    const Model* model = nullptr;
    unsigned variant = 0;

    [[nodiscard]] bool exists(ItemId id) const {
        return ((model->item(id).variants >> variant) & 1U) != 0;
    }
};

State assembled(const Bench& bench);

// Why an act cannot be done.
struct WrongState {
    StateId found = 0;
    std::uint16_t member = 0;
}; // member from 0
struct OutOfReach {
    std::vector<ItemId> by;
    Span because;
    ItemId terminal = {}; // of a supply that no part carries: before which it is in the way
};                        // what is in the way, by the shortest way in
struct UnmetNeed {
    ItemId item;
    StateSet states = 0;
    Span because;
};
struct StillLive {
    ItemId source;
    ItemId fed;
};
struct StillHeld {
    std::vector<ItemId> by;
};
struct StillBlocked {
    ItemId by;
};
struct NotSeated {
    std::vector<ItemId> parts;
}; // those that are not in their place
struct UsedTwice {};
using Refusal = std::variant<WrongState, OutOfReach, UnmetNeed, StillLive, StillHeld, StillBlocked,
                             NotSeated, UsedTwice>;

// The first reason against it, in the order of docs/semantics.md; nothing when it can be done.
std::optional<Refusal> refusal(const Bench& bench, const State& state, const Act& act);

// Does the act without asking. Members that do not stand in the from-state stay as they are.
void perform(const Bench& bench, State& state, const Act& act);

// refusal and perform in one.
std::optional<Refusal> apply(const Bench& bench, State& state, const Act& act);

// The act that takes back what `act` does from `from`; nothing when its kind has no way back.
std::optional<Act> reversed(const Model& model, const Act& act, StateId from);

// --- questions about a state ---
StateId state_of(const Bench& bench, const State& state, ItemId item, std::uint16_t member,
                 unsigned set);
bool present(const Bench& bench, const State& state, ItemId item);
bool in_first_state(const Bench& bench, const State& state, ItemId item); // all members, first set
bool binds(const Bench& bench, const State& state, ItemId tie);
bool covers(const Bench& bench, const State& state, ItemId part);
bool blocks(const Bench& bench, const State& state, ItemId part);
// Does every connector bind through which the source feeds all that it feeds?
bool is_joined(const Bench& bench, const State& state, ItemId source);
bool is_live(const Bench& bench, const State& state, ItemId source); // on, and joined
bool holds(const Bench& bench, const State& state, const model::Condition& condition);
bool holds(const Bench& bench, const State& state, const model::Need& need);
// The innermost piece, of the item and its carriers, that is off; unknown id: the device itself.
ItemId place(const Bench& bench, const State& state, ItemId item);
ItemId body(const Bench& bench, const State& state, ItemId item);
// Where the item stands when it is at work: its carrier's place; of a tie, that of the part it is
// tied to.
ItemId seat(const Bench& bench, const State& state, ItemId item);
// What is in the way to the item at `at`, by the way with the fewest; empty: it can be reached.
// What goes along with it (`with_it`) is never in its way.
std::vector<ItemId> in_the_way(const Bench& bench, const State& state, ItemId item, ItemId at,
                               const std::vector<ItemId>& with_it = {}, Span* because = nullptr);
// To a part where it lies now, to anything else at its seat.
std::vector<ItemId> covers_of(const Bench& bench, const State& state, ItemId item,
                              Span* because = nullptr);
bool reachable(const Bench& bench, const State& state, ItemId item);
// The fasteners that press a tie which is laid first, or grip a connector that is clamped: those
// that hold two of the parts that it touches. Of a seal, the pipe joints that join them, too. None
// of any other tie.
std::vector<ItemId> pressing(const Bench& bench, ItemId tie);
// Does what only opens hang on the tie, or leave it where it lies, held back by nothing: a lead, a
// hose, a washer of its joint, the ring of a door that no screw shuts?
bool may_hang_on(const Bench& bench, ItemId tie);
// The part with everything that it carries now.
std::vector<ItemId> moved_with(const Bench& bench, const State& state, ItemId part);

std::uint32_t slot(const Model& model, ItemId item, std::uint16_t member, unsigned set);

} // namespace matchmark::bench
