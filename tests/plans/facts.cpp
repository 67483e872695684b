// Writes a device down as the facts that plan.lp reads: everything by its number.
#include "plans/solver.hpp"

#include "bench/isolation.hpp"
#include "model/driven.hpp"
#include "model/passing_on.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/core.h>
#include <iterator>

namespace matchmark::plans {

using model::contains;
using model::Item;
using model::ItemId;
using model::ItemRef;
using model::Kind;

namespace {

template <class... Arguments>
void add(std::string& facts, fmt::format_string<Arguments...> format, Arguments&&... arguments) {
    fmt::format_to(std::back_inserter(facts), format, std::forward<Arguments>(arguments)...);
    facts += ".\n";
}

void add_states(std::string& facts, std::uint32_t k, const char* name, model::StateSet states) {
    for (unsigned state = 0; state < 64; ++state) {
        if (contains(states, static_cast<model::StateId>(state)))
            add(facts, "{}({},{})", name, k, state);
    }
}

double seconds(const std::optional<model::Quantity>& quantity) {
    return quantity ? quantity->base : 0;
}

} // namespace

// docs/planning.md, "Time", for one member: the last line of the timing that names verb and kind,
// or else what the kind says. The library's usual timing asks nothing for each act beside.
double takes(const model::Model& model, const Kind& kind, const model::Verb& verb) {
    const model::Timing* usual = nullptr;
    for (const model::Timing& timing : model.timings)
        usual = timing.usual ? &timing : usual;
    double found = seconds(verb.takes);
    if (usual == nullptr)
        return found;
    const bool goes_out = kind.set_of[verb.to] == 0 && !contains(kind.present, verb.to);
    const bool is_thing = kind.role == model::Role::part || kind.role == model::Role::fastener;
    for (const model::TimedVerb& timed : usual->verbs) {
        if (timed.verb != verb.name ||
            std::find(timed.kinds.begin(), timed.kinds.end(), kind.name) == timed.kinds.end())
            continue;
        found = seconds(timed.takes) + (verb.by_hand ? 0 : seconds(usual->position)) +
                (goes_out && is_thing ? seconds(usual->set_aside) : 0);
    }
    return found;
}

namespace {

void add_verb(std::string& facts, const model::Model& model, const Kind& kind, std::uint32_t k,
              std::size_t v) {
    const model::Verb& verb = kind.verbs[v];
    add(facts, "verb({},{},{})", k, v, kind.set_of[verb.to]);
    add(facts, "to({},{},{})", k, v, verb.to);
    for (unsigned state = 0; state < kind.states.size(); ++state) {
        if (contains(verb.from, static_cast<model::StateId>(state)))
            add(facts, "from({},{},{})", k, v, state);
    }
    add(facts, "takes({},{},{})", k, v, std::llround(takes(model, kind, verb) * 1000));
    if (verb.safe_when_live)
        add(facts, "safe_live({},{})", k, v);
    if (verb.from_outside)
        add(facts, "outside({},{})", k, v);
    if (verb.waits || verb.decays)
        add(facts, "timed({},{})", k, v);
}

void add_kind(std::string& facts, const model::Model& model, const Kind& kind, std::uint32_t k) {
    for (std::size_t s = 0; s < kind.states.size(); ++s) {
        add(facts, "order({},{},{})", k, s, s);
        add(facts, "state({},{},{})", k, kind.set_of[s], s);
    }
    for (const model::StateId first : kind.set_first)
        add(facts, "first({},{},{})", k, kind.set_of[first], first);
    // Only the first set says what stands in the way.
    model::StateSet place = 0;
    for (std::size_t s = 0; s < kind.states.size(); ++s)
        place |= kind.set_of[s] == 0 ? model::in_set(static_cast<model::StateId>(s)) : 0;
    add_states(facts, k, "present_in", kind.present & place);
    add_states(facts, k, "binds_in", kind.binds & place);
    add_states(facts, k, "covers_in", kind.covers & place);
    add_states(facts, k, "blocks_in", kind.blocks & place);
    add_states(facts, k, "live_in", kind.live & place);
    add_states(facts, k, "may_end_in", kind.may_end);
    if (kind.lies_loose)
        add(facts, "lies_loose({})", k);
    if (kind.laid_first)
        add(facts, "laid_first({})", k);
    if (model::carries_matter(kind))
        add(facts, "of_matter({})", k);
    if (kind.bare)
        add(facts, "bare({})", k);
    if (kind.lets_out)
        add(facts, "lets_out({})", k);
    if (kind.clamped)
        add(facts, "clamped({})", k);
    for (std::size_t v = 0; v < kind.verbs.size(); ++v)
        add_verb(facts, model, kind, k, v);
    for (std::size_t n = 0; n < kind.needs.size(); ++n) {
        for (std::size_t v = 0; v < kind.verbs.size(); ++v) {
            if (kind.verbs[v].name == kind.needs[n].verb)
                add(facts, "own_need({},{},{})", k, n, v);
        }
        for (std::size_t s = 0; s < kind.states.size(); ++s) {
            if (contains(kind.needs[n].states, static_cast<model::StateId>(s)))
                add(facts, "own_state({},{},{})", k, n, s);
        }
    }
    for (std::size_t u = 0; u < kind.hazards.size(); ++u) {
        add(facts, "hazard({},{})", k, u);
        for (std::size_t s = 0; s < kind.states.size(); ++s) {
            if (contains(kind.hazards[u].safe, static_cast<model::StateId>(s)))
                add(facts, "safe({},{},{})", k, u, s);
        }
        if (kind.hazards[u].on_reach)
            add(facts, "on_reach({},{})", k, u);
    }
}

// Does some line name members of the group apart from the others?
bool named_apart(const bench::Bench& on, ItemId id) {
    const auto names = [&](const ItemRef& ref) { return ref.item == id && !ref.members.empty(); };
    return std::any_of(on.model->items.begin(), on.model->items.end(), [&](const Item& item) {
        const bool needs = std::any_of(item.needs.begin(), item.needs.end(), [&](const auto& need) {
            return names(need.condition.item);
        });
        return needs || std::any_of(item.reach.begin(), item.reach.end(), [&](const auto& clause) {
                   return std::any_of(clause.ways.begin(), clause.ways.end(), [&](const auto& way) {
                       return std::any_of(way.begin(), way.end(), names);
                   });
               });
    });
}

// How many members of the group stand as one in the facts.
unsigned alike(const bench::Bench& on, ItemId id, bool groups_as_one) {
    return groups_as_one && !named_apart(on, id) ? on.model->item(id).count : 1;
}

// The members meant, from 1; none when the variant lacks the item.
std::vector<unsigned> members(const bench::Bench& on, const ItemRef& ref, bool groups_as_one) {
    std::vector<unsigned> list;
    if (!on.exists(ref.item))
        return list;
    if (alike(on, ref.item, groups_as_one) > 1)
        return {1};
    list.assign(ref.members.begin(), ref.members.end());
    for (unsigned member = 1; ref.members.empty() && member <= on.model->item(ref.item).count;
         ++member)
        list.push_back(member);
    return list;
}

void add_states_of(std::string& facts, std::uint32_t i, std::size_t need, model::StateSet states) {
    for (unsigned state = 0; state < 64; ++state) {
        if (contains(states, static_cast<model::StateId>(state)))
            add(facts, "does_too({},{},{})", i, need, state);
    }
}

void add_item_facts(std::string& facts, const bench::Bench& on, std::uint32_t i,
                    bool groups_as_one) {
    static constexpr const char* roles[] = {"part", "fastener", "connector",
                                            "bond", "fluid",    "energy"};
    const Item& item = on.model->items[i];
    add(facts, "item({},\"{}\")", i, roles[static_cast<std::size_t>(item.role)]);
    add(facts, "kind({},{})", i, item.kind.value);
    const unsigned as_one = alike(on, ItemId{i}, groups_as_one);
    add(facts, "member({},1..{})", i, as_one > 1 ? 1U : item.count);
    add(facts, "times({},{})", i, as_one);
    if (item.carrier.known())
        add(facts, "carrier({},{})", i, item.carrier.value);
    if (item.safe_when_live)
        add(facts, "item_safe_live({})", i);
    for (std::size_t n = 0; n < item.touches.size(); ++n) {
        if (on.exists(item.touches[n]))
            add(facts, "touches({},{},{})", i, n, item.touches[n].value);
    }
    for (std::size_t c = 0; c < item.reach.size(); ++c) {
        if (!item.reach[c].ways.empty())
            add(facts, "clause({},{})", i, c);
        for (std::size_t w = 0; w < item.reach[c].ways.size(); ++w) {
            add(facts, "way({},{},{})", i, c, w);
            for (const ItemRef& ref : item.reach[c].ways[w]) {
                for (const unsigned member : members(on, ref, groups_as_one))
                    add(facts, "bars({},{},{},{},{})", i, c, w, ref.item.value, member);
            }
        }
    }
    const auto listed = [&](const char* name, const std::vector<ItemId>& list) {
        for (const ItemId other : list) {
            if (on.exists(other))
                add(facts, "{}({},{})", name, i, other.value);
        }
    };
    listed("blocker", item.blocked_by);
    listed("feeds", item.feeds);
    listed("through", item.through);
    listed("terminal", item.feeding->terminals);
    for (const model::FedThrough& fed : item.feeding->feeds_through) {
        for (const ItemId connector : fed.connectors) {
            if (on.exists(connector) && on.exists(fed.part))
                add(facts, "behind({},{},{})", i, fed.part.value, connector.value);
            if (model::is_on_its_line(item, connector, fed.part) &&
                !model::cut_from_outside(on.model->kind(item.kind)))
                add(facts, "cuts_line({},{},{})", i, connector.value, fed.part.value);
        }
    }
    listed("holds_driven", model::driven_held_by(*on.model, item));
    for (std::size_t n = 0; n < item.needs.size(); ++n) {
        const Kind& kind = on.model->kind(item.kind);
        for (std::size_t v = 0; v < kind.verbs.size(); ++v) {
            if (kind.verbs[v].name == item.needs[n].verb)
                add(facts, "need({},{},{})", i, n, v);
        }
        add_states_of(facts, i, n, item.needs[n].or_in);
        if (item.needs[n].alone)
            add(facts, "for_one_verb({},{})", i, n);
        for (const unsigned member : members(on, item.needs[n].condition.item, groups_as_one))
            add(facts, "asked({},{},{},{},{})", i, n, item.needs[n].condition.item.item.value,
                member, item.needs[n].condition.state);
    }
}

} // namespace

std::string facts_of(const bench::Bench& on, const plan::WayInGoal& goal, bool groups_as_one) {
    std::string facts;
    std::vector<std::uint32_t> kinds;
    for (std::uint32_t i = 0; i < on.model->items.size(); ++i) {
        const std::uint32_t kind = on.model->items[i].kind.value;
        if (on.exists(ItemId{i}) && std::find(kinds.begin(), kinds.end(), kind) == kinds.end())
            kinds.push_back(kind);
    }
    for (const std::uint32_t kind : kinds)
        add_kind(facts, *on.model, on.model->kinds[kind], kind);
    for (std::uint32_t i = 0; i < on.model->items.size(); ++i) {
        if (on.exists(ItemId{i}))
            add_item_facts(facts, on, i, groups_as_one);
    }
    for (const ItemId item : goal.items)
        add(facts, "{}({})", goal.expose ? "expose" : "out", item.value);
    return facts;
}

} // namespace matchmark::plans
