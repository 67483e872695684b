// What a state of the bench says: what is on, what binds, what is in the way.
#include "bench/bench.hpp"
#include "bench/tally.hpp"

#include "model/run_out.hpp"

#include <algorithm>
#include <iterator>

namespace matchmark::bench {

using model::contains;
using model::Item;
using model::ItemRef;
using model::Kind;
using model::Role;

std::uint32_t slot(const Model& model, ItemId id, std::uint16_t member, unsigned set) {
    const Item& item = model.item(id);
    const auto sets = static_cast<std::uint32_t>(model.kind(item.kind).set_count());
    return item.first_slot + member * sets + set;
}

State assembled(const Bench& bench) {
    const Model& model = *bench.model;
    State state;
    state.slots.resize(model.slot_count);
    state.flags.resize(model.member_count);
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const Kind& kind = model.kind_of(ItemId{i});
        for (std::uint16_t member = 0; member < model.items[i].count; ++member) {
            for (unsigned set = 0; set < kind.set_count(); ++set) {
                state.slots[slot(model, ItemId{i}, member, set)] = kind.set_first[set];
            }
        }
    }
    return state;
}

StateId state_of(const Bench& bench, const State& state, ItemId item, std::uint16_t member,
                 unsigned set) {
    return state.slots[slot(*bench.model, item, member, set)];
}

namespace {

// Is any (or every) member of the item, or of the members named, in one of these states?
bool in_states(const Bench& bench, const State& state, ItemId id,
               const std::vector<std::uint16_t>& members, StateSet states, bool every) {
    const Model& model = *bench.model;
    const Item& item = model.item(id);
    const Kind& kind = model.kind(item.kind);
    const auto member_in = [&](std::uint16_t member) {
        for (unsigned set = 0; set < kind.set_count(); ++set) {
            if (contains(states, state_of(bench, state, id, member, set)))
                return true;
        }
        return false;
    };
    const std::size_t count = members.empty() ? item.count : members.size();
    for (std::size_t i = 0; i < count; ++i) {
        const auto member = static_cast<std::uint16_t>(members.empty() ? i : members[i] - 1U);
        if (member_in(member) != every)
            return !every;
    }
    return every;
}

bool any_in(const Bench& bench, const State& state, ItemId id, StateSet states) {
    return in_states(bench, state, id, {}, states, false);
}

} // namespace

bool present(const Bench& bench, const State& state, ItemId item) {
    return any_in(bench, state, item, bench.model->kind_of(item).present);
}

bool in_first_state(const Bench& bench, const State& state, ItemId item) {
    const StateId first = bench.model->kind_of(item).set_first.front();
    return in_states(bench, state, item, {}, model::in_set(first), true);
}

bool binds(const Bench& bench, const State& state, ItemId tie) {
    return bench.exists(tie) && any_in(bench, state, tie, bench.model->kind_of(tie).binds);
}

bool covers(const Bench& bench, const State& state, ItemId part) {
    return bench.exists(part) && any_in(bench, state, part, bench.model->kind_of(part).covers);
}

bool blocks(const Bench& bench, const State& state, ItemId part) {
    return bench.exists(part) && any_in(bench, state, part, bench.model->kind_of(part).blocks);
}

bool is_joined(const Bench& bench, const State& state, ItemId source) {
    const auto& through = bench.model->item(source).through;
    return std::all_of(through.begin(), through.end(), [&](ItemId connector) {
        return !bench.exists(connector) || binds(bench, state, connector);
    });
}

bool is_live(const Bench& bench, const State& state, ItemId source) {
    const Item& item = bench.model->item(source);
    if (item.feeds.empty() || !bench.exists(source))
        return false;
    return any_in(bench, state, source, bench.model->kind_of(source).live) &&
           is_joined(bench, state, source);
}

bool holds(const Bench& bench, const State& state, const model::Condition& condition) {
    if (!bench.exists(condition.item.item))
        return true;
    return in_states(bench, state, condition.item.item, condition.item.members,
                     model::in_set(condition.state), true);
}

bool holds(const Bench& bench, const State& state, const model::Need& need) {
    const ItemRef& asked = need.condition.item;
    return !bench.exists(asked.item) ||
           in_states(bench, state, asked.item, asked.members, model::states_of(need), true);
}

ItemId place(const Bench& bench, const State& state, ItemId item) {
    while (item.known() && present(bench, state, item))
        item = bench.model->item(item).carrier;
    return item;
}

ItemId body(const Bench& bench, const State& state, ItemId item) {
    while (item.known() && in_first_state(bench, state, item)) {
        item = bench.model->item(item).carrier;
    }
    return item;
}

ItemId seat(const Bench& bench, const State& state, ItemId id) {
    const Item& item = bench.model->item(id);
    if (item.carrier.known())
        return place(bench, state, item.carrier);
    // A tie is worked where the part is to which the others are tied; a variant may lack that part.
    const auto base = std::find_if(item.touches.rbegin(), item.touches.rend(),
                                   [&](ItemId part) { return bench.exists(part); });
    return base == item.touches.rend() ? ItemId{} : place(bench, state, *base);
}

namespace {

// A tie is in the way while it binds; a part or a fluid while it covers. Parts elsewhere, on the
// bench, cover nothing here.
bool obstructs(const Bench& bench, const State& state, const ItemRef& ref, ItemId at) {
    if (!bench.exists(ref.item))
        return false;
    const Kind& kind = bench.model->kind_of(ref.item);
    const StateSet states = model::is_tie(kind.role) ? kind.binds : kind.covers;
    if (!in_states(bench, state, ref.item, ref.members, states, false))
        return false;
    return kind.role != Role::part || place(bench, state, ref.item) == at;
}

} // namespace

std::vector<ItemId> in_the_way(const Bench& bench, const State& state, ItemId item, ItemId at,
                               const std::vector<ItemId>& with_it, Span* because) {
    std::vector<ItemId> all;
    for (const model::ReachClause& clause : bench.model->item(item).reach) {
        std::vector<ItemId> fewest;
        bool first = true;
        for (const auto& way : clause.ways) {
            std::vector<ItemId> found;
            for (const ItemRef& ref : way) {
                const bool goes_along =
                    std::find(with_it.begin(), with_it.end(), ref.item) != with_it.end();
                if (!goes_along && obstructs(bench, state, ref, at))
                    found.push_back(ref.item);
            }
            if (first || found.size() < fewest.size())
                fewest = std::move(found);
            first = false;
        }
        if (!fewest.empty() && all.empty() && because != nullptr)
            *because = clause.span;
        std::copy_if(fewest.begin(), fewest.end(), std::back_inserter(all), [&](ItemId bar) {
            return std::find(all.begin(), all.end(), bar) == all.end(); // two lines may name it
        });
    }
    return all;
}

std::vector<ItemId> covers_of(const Bench& bench, const State& state, ItemId item, Span* because) {
    const bool is_part = bench.model->item(item).role == Role::part;
    const ItemId at = is_part ? place(bench, state, item) : seat(bench, state, item);
    return in_the_way(bench, state, item, at, {}, because);
}

bool reachable(const Bench& bench, const State& state, ItemId item) {
    return covers_of(bench, state, item).empty();
}

// What `reachable` asks: the ways, and the places of all that it sets beside each other.
std::vector<ItemId> reach_depends_on(const Model& model, ItemId id) {
    std::vector<ItemId> items;
    const auto add_with_carriers = [&](ItemId item) {
        for (; item.known(); item = model.item(item).carrier)
            items.push_back(item);
    };
    const Item& item = model.item(id);
    add_with_carriers(id);
    if (item.role != Role::part && !item.carrier.known()) {
        for (const ItemId part : item.touches)
            add_with_carriers(part);
    }
    for (const model::ReachClause& clause : item.reach) {
        for (const auto& way : clause.ways) {
            for (const ItemRef& ref : way)
                add_with_carriers(ref.item);
        }
    }
    return items;
}

std::vector<ItemId> moved_with(const Bench& bench, const State& state, ItemId part) {
    std::vector<ItemId> moved{part};
    for (std::size_t i = 0; i < moved.size(); ++i) {
        for (const ItemId carried : bench.model->item(moved[i]).carried) {
            if (bench.exists(carried) && present(bench, state, carried))
                moved.push_back(carried);
        }
    }
    return moved;
}

std::vector<ItemId> pressing(const Bench& bench, ItemId tie) {
    const model::Item& laid = bench.model->item(tie);
    const model::Kind& kind = bench.model->kind(laid.kind);
    if (!kind.laid_first && !kind.clamped)
        return {};
    std::vector<ItemId> found = model::fasteners_across(*bench.model, tie);
    if (laid.role == Role::bond) {
        const std::vector<ItemId> joints = model::joints_across(*bench.model, tie);
        found.insert(found.end(), joints.begin(), joints.end());
    }
    const auto is_joined = [&](ItemId part) {
        return bench.exists(part) &&
               std::find(laid.touches.begin(), laid.touches.end(), part) != laid.touches.end();
    };
    std::erase_if(found, [&](ItemId id) {
        const auto& held = bench.model->item(id).touches;
        return !bench.exists(id) || std::count_if(held.begin(), held.end(), is_joined) < 2;
    });
    return found;
}

bool may_hang_on(const Bench& bench, ItemId tie) {
    const Role role = bench.model->item(tie).role;
    if (role != Role::bond)
        return role == Role::connector;
    const auto pressed_by = pressing(bench, tie);
    const bool screwed_down = std::any_of(pressed_by.begin(), pressed_by.end(), [&](ItemId id) {
        return bench.model->item(id).role == Role::fastener;
    });
    if (bench.model->kind_of(tie).lies_loose && !screwed_down)
        return true;
    const auto joints = model::joints_across(*bench.model, tie);
    return std::any_of(joints.begin(), joints.end(),
                       [&](ItemId joint) { return bench.exists(joint); });
}

} // namespace matchmark::bench
