// The things that a device is made of, and what ties, covers, blocks and feeds them.
#pragma once

#include "model/kind.hpp"
#include "model/product.hpp"
#include "model/seldom.hpp"
#include "model/shared_list.hpp"

#include <memory>
#include <string>
#include <vector>

namespace matchmark::model {

// An item, or some members of a group (numbered from 1; empty: all).
struct ItemRef {
    ItemId item;
    SeldomList<std::uint16_t> members;
    Span span;
};

struct Condition {
    ItemRef item;
    StateId state = 0;
    Span span;
};

// The item is reached when, of one of these ways, nothing is in the way any more.
struct ReachClause {
    std::vector<std::vector<ItemRef>> ways;
    Span span; // the declaration that says so: `covers`, `behind`, `under`
};

// Who says that something has to be so first.
enum class NeedOf : unsigned char {
    its_line,
    vessel, // what runs out of a joint (model/run_out.hpp)
    holder, // what holds a fastener (model/comes_first.hpp)
    cell,   // what nobody can cut but at its plug (likewise)
    supply, // what fills a vessel again while it is emptied (model/run_out.hpp)
    load,   // what comes down with a pressure (model/pressed_up.hpp)
};

struct Need {
    Condition condition;
    std::string verb;
    Span span;
    NeedOf of = NeedOf::its_line;
    bool alone = false; // of this verb alone, not of the one that leads back
    StateSet or_in = 0; // states, beside the condition's own, that will do as well
};

inline StateSet states_of(const Need& need) { return in_set(need.condition.state) | need.or_in; }
// Does the need count for the verb, done from one of these states?
inline bool counts_for(const Kind& kind, const Need& need, const Verb& verb, StateSet from) {
    return need.alone ? need.verb == verb.name : counts_for(kind, need.verb, verb, from);
}

struct Tightening {
    std::optional<Quantity> torque;
    Seldom<Quantity> preload; // the force asked for, from which the torque was worked out
    std::string pattern;      // star, spiral, ...; empty: any order
    int passes = 1;
    Span span;
};

// A wear limit or a setting that the book gives.
struct WearLimit {
    std::string name;
    Limit limit;
    std::vector<Condition> when; // when it can be measured; empty: while the item is off its place
    Span span;
};

struct SpecWords {
    std::string text;               // as written, single spaces
    std::vector<std::string> words; // names and numbers, units left out
    std::vector<Quantity> quantities;
};

// What `kind` or a count line says after the kind's name: "M2 x 6", "hexalobular 6", "countersunk".
// Thousands of screws say the same.
struct SpecPhrase {
    std::shared_ptr<const SpecWords> said;
    Span span;
    const SpecWords* operator->() const { return said.get(); }
};

inline SpecPhrase spec_phrase(SpecWords said) {
    return {std::make_shared<const SpecWords>(std::move(said)), {}};
}

struct Point {
    double x = 0;
    double y = 0;
};

struct Positions {
    std::string face;
    std::vector<Point> points;
    Span span;
};

// What the words of a fastener say of its thread and its drive; each empty unless one that is
// declared is named.
struct Bolt {
    std::string drive;
    std::string drive_size; // "6", "PH00"; empty when none is given
    std::string thread;
    double length_mm = 0; // after the thread's `x`; 0: none
    std::string grade;
    std::string friction;
    auto operator<=>(const Bolt&) const = default;
};

// What must all bind for the part to be fed, beside the source's own `through`.
struct FedThrough {
    ItemId part;
    std::vector<ItemId> connectors;
};

// What a part says of what flows, beside what it feeds and through which connectors.
struct Feeding {
    SeldomList<ItemId> feeds_beyond; // of what it feeds, what parts pass on to (passing_on.hpp)
    SeldomList<FedThrough>
        feeds_through;            // of what it feeds, what lies behind connectors of its own
    SeldomList<ItemId> drives;    // of what it feeds, what moves with what is fed (driven.hpp)
    SeldomList<ItemId> passes_to; // a part's that is no source: what its line `feeds` names
    SeldomList<FedThrough> lines_through; // connectors on some of its lines, by part
    // Of energy that no part carries, beside what it feeds: the bare ends on that.
    SeldomList<ItemId> bare_ends;
    // Where hands are laid on such energy, unless from outside or where it says itself what it is
    // behind: one of these has to lie open (model/sources.hpp).
    SeldomList<ItemId> terminals;
};

// What few items say.
struct RareDetails {
    SeldomList<ItemId> guards; // of a part whose kind guards: what it covers
    Seldom<Positions> positions;
    SeldomList<std::string> keep; // order, face, ...: goes back as it was
    SeldomList<WearLimit> limits;
    Seldom<std::string> used_again_if; // what to look at before it goes back
    Seldom<Quantity> depth;            // how deep a fastener may reach into its hole
    Seldom<Quantity> price;            // of a new one
    Seldom<std::string> counts_as;     // which of an index's parts it is
    SeldomList<ItemId> comes_with;     // new ones come with these spare parts at no cost
    bool authorised_remotely = false;  // a new one works only after its maker has let it
};

struct Item {
    std::string name;
    std::string title;
    Role role = Role::part;
    KindId kind;
    std::uint16_t count = 1;
    std::uint32_t first_slot =
        0; // in bench::State; member m, set s stands at first_slot + m * sets + s
    std::uint32_t first_member = 0;
    VariantMask variants = all_variants;
    ItemId carrier;
    SeldomList<ItemId> carried; // directly
    std::vector<SpecPhrase> spec;
    Seldom<Quantity> amount;        // a fluid's
    std::vector<ReachClause> reach; // all must be met
    SeldomList<ItemId> blocked_by;
    std::vector<ItemId> touches; // a tie's parts, those that it is tied `to` last
    std::vector<ItemId> ties;    // the ties that touch this part
    // A source's: what a line names, then what it feeds beyond, then what it drives.
    SeldomList<ItemId> feeds;
    SeldomList<ItemId> through; // connectors, on all of its lines
    Seldom<Feeding> feeding;
    // The other way round, for what asks after one item; in order of declaration. Where a device is
    // tried out in another shape these may name more than `feeds` and `through` do, never less.
    SeldomList<ItemId> fed_by;       // what feeds this part
    SeldomList<ItemId> carries_from; // what feeds through this connector
    SeldomList<Need> needs;
    Seldom<Tightening> tightening;
    Seldom<RareDetails> rare;
    ItemId renewed_as;
    bool one_use = false;
    bool safe_when_live = false;
    bool lets_nothing_out = false; // no fluid and no pressure stands behind it
    Seldom<std::string> told_by;
    SeldomList<Prose> messages;
    Shared<Bolt> bolt;
    ItemId above;     // what a fastener would meet below its hole
    Span span;        // its name
    Span declaration; // its head line
};

// A line of the device that nobody has looked at yet: inferred, and marked `assumed`.
struct Assumption {
    ItemId item; // whose declaration it stands in
    Span line;   // the same as the `span` of what it declares
};

// Shown wherever the item is worked on.
struct ItemCaution {
    std::string name;
    ItemRef item;
    std::vector<Condition> when;
    Prose message;
};

struct Function {
    std::string name;
    std::string title;
    bool is_rating = false;
    std::vector<ItemId> through;
    Span span;
};

// What a part of a rating's code means: `IP6X`, where X stands for any one sign.
struct RatingPart {
    std::string code;
    std::string title;
    Span span;
};

struct Face {
    std::string name;
    double width_mm = 0;
    double height_mm = 0;
    double corner_mm = 0;
    Span span;
};

struct Device {
    std::string name;
    std::string title;
    std::string revision;
    std::optional<Quantity> mass;
    std::vector<std::string> variants;
    std::vector<Face> faces;
    std::vector<Prose> messages;
    Product product = {};
    Span span;
};

} // namespace matchmark::model
