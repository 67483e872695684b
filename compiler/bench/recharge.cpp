// Puts charge, heat and motion back into what is fed, once its supply is on.
#include "bench/recharge.hpp"

#include "bench/power.hpp"

#include <algorithm>

namespace matchmark::bench {

using model::contains;
using model::Item;
using model::Kind;

namespace {

bool feeds_nothing(const Bench& bench, ItemId item) {
    const Item& moved = bench.model->item(item);
    return moved.feeds.empty() && moved.carries_from.empty();
}

// The item itself, or what feeds through it.
std::vector<ItemId> sources_of(const Bench& bench, ItemId item) {
    std::vector<ItemId> sources = bench.model->item(item).carries_from;
    sources.push_back(item);
    std::erase_if(sources, [&](ItemId id) { return !is_supply(bench, id); });
    return sources;
}

// What is under power with what these feed, and the energy that is everywhere.
std::vector<ItemId> all_charged(const Bench& bench, const State* state,
                                const std::vector<ItemId>& sources) {
    std::vector<ItemId> fed = fed_by_all(bench, sources);
    for (std::uint32_t i = 0; i < bench.model->items.size(); ++i) {
        if (is_everywhere(bench, ItemId{i}))
            fed.push_back(ItemId{i});
    }
    return under_power_with(bench, state, fed).items;
}

// Heat and motion, and not a charge: that comes from a source.
bool is_waited_for(const Kind& kind, unsigned set) {
    return std::any_of(kind.verbs.begin(), kind.verbs.end(), [&](const model::Verb& verb) {
        return kind.set_of[verb.to] == set && verb.to != kind.set_first[set] && verb.waits;
    });
}

} // namespace

bool may_hold_a_charge(const Kind& kind) {
    if (kind.hazards.empty())
        return false;
    for (unsigned set = 0; set < kind.set_count(); ++set) {
        if (taken_back(kind, set) != 0)
            return true;
    }
    return false;
}

bool holds_a_charge(const Bench& bench, ItemId id) {
    return bench.exists(id) && may_hold_a_charge(bench.model->kind_of(id));
}

void charge(const Bench& bench, State& state, ItemId id, Charged how) {
    const Item& item = bench.model->item(id);
    const Kind& kind = bench.model->kind(item.kind);
    if (!holds_a_charge(bench, id))
        return;
    for (unsigned set = 0; set < kind.set_count(); ++set) {
        if (how == Charged::by_running && !is_waited_for(kind, set))
            continue;
        const StateSet back = taken_back(kind, set);
        for (std::uint16_t member = 0; back != 0 && member < item.count; ++member) {
            StateId& stands = state.slots[slot(*bench.model, id, member, set)];
            if (contains(back, stands))
                stands = kind.set_first[set];
        }
    }
}

std::vector<ItemId> charged_by(const Bench& bench, ItemId item) {
    if (feeds_nothing(bench, item))
        return {};
    const std::vector<ItemId> sources = sources_of(bench, item);
    if (sources.empty())
        return {};
    std::vector<ItemId> charged = all_charged(bench, nullptr, sources);
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
    for (const ItemId id : all_charged(bench, &state, on)) {
        if (!among(on, id)) // what begins stands as it was brought to: an engine, ready to start
            charge(bench, state, id, Charged::by_its_supply);
    }
}

} // namespace matchmark::bench
