// Puts charge, heat and motion back into what is fed, once its supply is on.
#include "bench/recharge.hpp"

#include "bench/isolation.hpp"

#include <algorithm>

namespace matchmark::bench {

using model::contains;
using model::Item;
using model::Kind;
using model::Role;

namespace {

// What time alone does: a verb that waits, or decays, leads on in this set.
bool passes_with_time(const Kind& kind, unsigned set) {
    return std::any_of(kind.verbs.begin(), kind.verbs.end(), [&](const model::Verb& verb) {
        return kind.set_of[verb.to] == set && verb.to != kind.set_first[set] &&
               (verb.waits || verb.decays);
    });
}

// The states of this set that a supply takes back: those in which it may be left, when a hazard's
// safety lies in the set. In the first set that is said only of what flows and is made safe by
// time: heat, what runs on.
StateSet taken_back(const Kind& kind, unsigned set) {
    if (set == 0 && (kind.role != Role::energy || !passes_with_time(kind, set)))
        return 0;
    StateSet left = 0;
    bool safety = false;
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        const auto state = static_cast<StateId>(i);
        if (kind.set_of[i] != set || state == kind.set_first[set])
            continue;
        safety = safety || std::any_of(kind.hazards.begin(), kind.hazards.end(),
                                       [&](const model::HazardUse& use) {
                                           return contains(use.safe, state);
                                       });
        if (contains(kind.may_end, state))
            left |= model::in_set(state);
    }
    return safety ? left : StateSet{0};
}

// Where a source stands in its first set is the reader's act alone.
unsigned first_set_charged(const Bench& bench, ItemId id) {
    return bench.model->item(id).feeds.empty() ? 0 : 1;
}

bool holds_a_charge(const Bench& bench, ItemId id) {
    const Kind& kind = bench.model->kind_of(id);
    if (kind.hazards.empty() || !bench.exists(id))
        return false;
    for (unsigned set = first_set_charged(bench, id); set < kind.set_count(); ++set) {
        if (taken_back(kind, set) != 0)
            return true;
    }
    return false;
}

bool isolated_outside(const Bench& bench, ItemId source) {
    return bench.exists(source) && !bench.model->item(source).feeds.empty() &&
           cut_from_outside(bench.model->kind_of(source));
}

bool feeds_nothing(const Bench& bench, ItemId item) {
    const Item& moved = bench.model->item(item);
    return moved.feeds.empty() && moved.carries_from.empty();
}

// The item itself, or what feeds through it.
std::vector<ItemId> sources_of(const Bench& bench, ItemId item) {
    std::vector<ItemId> sources = bench.model->item(item).carries_from;
    sources.push_back(item);
    std::erase_if(sources, [&](ItemId id) { return !isolated_outside(bench, id); });
    return sources;
}

void charge(const Bench& bench, State& state, ItemId id) {
    const Item& item = bench.model->item(id);
    const Kind& kind = bench.model->kind(item.kind);
    if (!holds_a_charge(bench, id))
        return;
    for (unsigned set = first_set_charged(bench, id); set < kind.set_count(); ++set) {
        const StateSet back = taken_back(kind, set);
        for (std::uint16_t member = 0; back != 0 && member < item.count; ++member) {
            StateId& stands = state.slots[slot(*bench.model, id, member, set)];
            if (contains(back, stands))
                stands = kind.set_first[set];
        }
    }
}

// What is under power with these parts: what they carry, and what connectors join them to. With a
// state: only what is at its place, and through connectors that bind.
class Spread {
public:
    Spread(const Bench& bench, const State* state)
        : bench_(bench), state_(state), seen_(bench.model->items.size()) {}

    void add(ItemId id) {
        if (seen_[id.value] || !bench_.exists(id) || !there(id))
            return;
        seen_[id.value] = true;
        items_.push_back(id);
    }

    std::vector<ItemId> all() {
        for (std::size_t i = 0; i < items_.size(); ++i) {
            const Item& item = bench_.model->item(items_[i]);
            for (const ItemId carried : item.carried)
                add(carried);
            for (const ItemId tie : item.ties) {
                if (bench_.model->item(tie).role == Role::connector && joins(tie))
                    add_all(bench_.model->item(tie).touches);
            }
        }
        return items_;
    }

    void add_all(const std::vector<ItemId>& items) {
        for (const ItemId id : items)
            add(id);
    }

private:
    // Heat has no place of its own to be off from.
    [[nodiscard]] bool there(ItemId id) const {
        return state_ == nullptr || bench_.model->item(id).role == Role::energy ||
               present(bench_, *state_, id);
    }
    [[nodiscard]] bool joins(ItemId tie) const {
        return bench_.exists(tie) && (state_ == nullptr || binds(bench_, *state_, tie));
    }

    const Bench& bench_;
    const State* state_;
    std::vector<bool> seen_;
    std::vector<ItemId> items_;
};

// What no part carries is everywhere in the device.
void add_uncarried(const Bench& bench, Spread& spread) {
    const auto& items = bench.model->items;
    for (std::uint32_t i = 0; i < items.size(); ++i) {
        if (items[i].role == Role::energy && !items[i].carrier.known())
            spread.add(ItemId{i});
    }
}

} // namespace

std::vector<ItemId> charged_by(const Bench& bench, ItemId item) {
    if (feeds_nothing(bench, item))
        return {};
    const std::vector<ItemId> sources = sources_of(bench, item);
    if (sources.empty())
        return {};
    Spread spread(bench, nullptr);
    for (const ItemId source : sources)
        spread.add_all(bench.model->item(source).feeds);
    add_uncarried(bench, spread);
    std::vector<ItemId> charged = spread.all();
    std::erase_if(charged, [&](ItemId id) { return !holds_a_charge(bench, id); });
    return charged;
}

std::vector<ItemId> dead_sources_of(const Bench& bench, const State& state, ItemId item) {
    if (feeds_nothing(bench, item))
        return {};
    std::vector<ItemId> dead = sources_of(bench, item);
    std::erase_if(dead, [&](ItemId source) { return is_live(bench, state, source); });
    return dead;
}

void charge_again(const Bench& bench, State& state, const std::vector<ItemId>& were_dead) {
    std::vector<ItemId> on = were_dead;
    std::erase_if(on, [&](ItemId source) { return !is_live(bench, state, source); });
    if (on.empty())
        return; // after nearly every act
    Spread spread(bench, &state);
    for (const ItemId source : on)
        spread.add_all(bench.model->item(source).feeds);
    add_uncarried(bench, spread);
    for (const ItemId id : spread.all())
        charge(bench, state, id);
}

} // namespace matchmark::bench
