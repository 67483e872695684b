// A kind: the states that things of its sort can be in, and the verbs that move them from one to
// another. Kinds come from the parts library and from authors' files; none is known to the compiler
// by name.
#pragma once

#include "model/hazard.hpp"
#include "model/ids.hpp"
#include "model/quantity.hpp"
#include "source/text.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::model {

enum class Role : unsigned char { part, fastener, connector, bond, fluid, energy };

// Fasteners, and connectors that are screwed down: a terminal, a union.
constexpr bool takes_torque(Role role) { return role == Role::fastener || role == Role::connector; }
constexpr bool is_tie(Role role) {
    return role == Role::fastener || role == Role::connector || role == Role::bond;
}

struct Verb {
    std::string name;
    StateSet from = 0;
    StateId to = 0;
    std::vector<std::string> tools; // any of these will do; empty: nothing is asked
    bool by_hand = true;            // no tool need be named
    bool by_driver = false;         // whatever fits the item's drive
    std::optional<Limit> limit;     // what it proves or reaches, unless the action states its own
    bool safe_when_live = false;
    bool from_outside = false; // done on the shut device, unless it moves the part itself
    std::optional<Quantity> takes;
    std::optional<Quantity> waits; // passes by itself, beside `takes`
    bool decays = false;           // takes as long as a charge takes to fall to the limit
    Span span;
};

// An item of the kind is dangerous until it is in one of the safe states.
struct HazardUse {
    HazardId hazard;
    StateSet safe = 0;
    bool on_reach = false; // laying it open counts as meeting it, not only work on it
    Span span;
};

// A condition on the item's own state, often of another set: `needs cleaned to fit`.
struct OwnNeed {
    StateSet states = 0;
    std::string verb;
    Span span;
};

struct Kind {
    std::string name;
    std::string title;
    Role role = Role::part;
    std::vector<std::string> states;
    std::vector<std::uint8_t>
        set_of; // for each state, which set it belongs to (0: `states`, 1..: `also`)
    std::vector<StateId> set_first; // for each set, its first state: how it stands when assembled
    std::vector<Verb> verbs;
    StateSet present = 0;
    StateSet binds = 0;
    StateSet covers = 0;
    StateSet blocks = 0;
    StateSet live = 0;
    StateSet may_end = 0;     // beside the first of each set
    bool laid_first = false;  // put on before what it ties
    bool lies_loose = false;  // of a bond: it may be taken off when what it ties is apart
    bool parted_last = false; // of a connector: the last of its part's to go, the first to come
    bool clamped = false;  // of a connector: fasteners that hold the parts which it joins grip it
    bool bare = false;     // of a connector: its live ends can be touched while it is made
    bool lets_out = false; // of a connector or a plug: parted, it lets out what runs out
    bool runs_out = false; // of a fluid, or of a pressure
    bool rests_on_pressure = false; // of energy: comes down when the pressure under it is let off
    bool guards = false;            // of a part: keeps hands off what moves
    bool protects = false;          // without it a fault does harm: a fuse, a safety valve
    bool moves = false;             // of a part: driven when its function runs
    bool passes_on = false;         // of a part: stores nothing of what feeds it
    bool one_use = false;
    std::string used_again_if; // what to look at before it goes back; empty: nothing
    int good_for = 0;          // times that it may be parted and made again; 0: not known
    bool asks_torque = false;
    bool asks_test = false; // of a tie: tried once it is back
    std::vector<HazardUse> hazards;
    std::vector<OwnNeed> needs;
    std::string waste;    // class by which the old one is disposed of; empty: none
    std::string licensed; // trade; with `needs_license`
    bool needs_license = false;
    std::vector<Prose> messages;
    Span span; // its name

    [[nodiscard]] std::size_t set_count() const { return set_first.size(); }
};

// Does the verb part the tie: lead from where it binds to where it does not?
bool lets_go(const Kind& kind, const Verb& verb);
// Has the kind a verb, done from outside the device, that leads out of its live states?
bool cut_from_outside(const Kind& kind);
// A supply of water: what it feeds is filled by it, and not put under power.
inline bool carries_matter(const Kind& kind) {
    return kind.role == Role::energy && kind.runs_out && !kind.moves;
}
// Has what the verb works on to be laid open? From outside it need not, but for a part that comes
// out of the device or goes in: a pack does not slide through its door.
bool asks_reach(const Kind& kind, const Verb& verb);
// Does the verb put the item where it belongs: from where it is not there, or, of what always is,
// into its first state? That is where its marks have to meet.
bool comes_to_its_place(const Kind& kind, const Verb& verb);
// The verb by its name, or nothing.
const Verb* find_verb(const Kind& kind, std::string_view name);
// The verb that leads from `verb`'s to-state back to `from`; the first declared. Nothing when there
// is no way back.
const Verb* inverse(const Kind& kind, const Verb& verb, StateId from);
// Is `candidate` the inverse of `verb` for some from-state?
bool inverts(const Verb& verb, const Verb& candidate);
// Does what is said of the verb named count for this verb, done from one of these states: is it the
// same one, the one that leads back, or does it pass over the named one's way, as a screw undone at
// one go is slackened on the way?
bool counts_for(const Kind& kind, std::string_view named, const Verb& verb, StateSet from);
// Does the verb bring an item nearer to how it stands when assembled? States are declared from
// there outwards; the other sets (a charge, a preload) are never on the way.
bool leads_home(const Kind& kind, const Verb& verb);
// All states of one set (0: `states`, 1..: `also`).
StateSet states_of_set(const Kind& kind, unsigned set);
// The state by its name.
std::optional<StateId> find_state(const Kind& kind, std::string_view name);

} // namespace matchmark::model
