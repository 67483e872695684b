// Puts the charge back into what is fed, once its supply is on.
#include "bench/recharge.hpp"

#include "bench/isolation.hpp"

#include <algorithm>

namespace matchmark::bench {

using model::contains;
using model::Item;
using model::Kind;

namespace {

// The states of this set in which it may be left, when a hazard's safety lies among them.
StateSet left_safe(const Kind& kind, unsigned set) {
    StateSet left = 0;
    StateSet safe = 0;
    for (const model::HazardUse& use : kind.hazards)
        safe |= use.safe;
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        const auto state = static_cast<StateId>(i);
        if (kind.set_of[i] == set && state != kind.set_first[set] && contains(kind.may_end, state))
            left |= model::in_set(state);
    }
    return (left & safe) != 0 ? left : StateSet{0};
}

bool holds_a_charge(const Kind& kind) {
    for (unsigned set = 1; set < kind.set_count(); ++set) {
        if (left_safe(kind, set) != 0)
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

void charge(const Bench& bench, State& state, ItemId part) {
    const Item& item = bench.model->item(part);
    const Kind& kind = bench.model->kind(item.kind);
    for (unsigned set = 1; set < kind.set_count(); ++set) {
        const StateSet left = left_safe(kind, set);
        for (std::uint16_t member = 0; left != 0 && member < item.count; ++member) {
            StateId& stands = state.slots[slot(*bench.model, part, member, set)];
            if (contains(left, stands))
                stands = kind.set_first[set];
        }
    }
}

} // namespace

std::vector<ItemId> charged_by(const Bench& bench, ItemId item) {
    if (bench.model->item(item).feeds.empty() && bench.model->item(item).carries_from.empty())
        return {};
    std::vector<ItemId> parts;
    if (feeds_nothing(bench, item))
        return parts;
    for (const ItemId source : sources_of(bench, item)) {
        const auto& feeds = bench.model->item(source).feeds;
        parts.insert(parts.end(), feeds.begin(), feeds.end());
    }
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const auto& carried = bench.model->item(parts[i]).carried;
        parts.insert(parts.end(), carried.begin(), carried.end());
    }
    std::erase_if(parts, [&](ItemId part) {
        return !bench.exists(part) || !holds_a_charge(bench.model->kind_of(part));
    });
    return parts;
}

std::vector<ItemId> dead_sources_of(const Bench& bench, const State& state, ItemId item) {
    if (feeds_nothing(bench, item))
        return {};
    std::vector<ItemId> dead = sources_of(bench, item);
    std::erase_if(dead, [&](ItemId source) { return is_live(bench, state, source); });
    return dead;
}

void charge_again(const Bench& bench, State& state, const std::vector<ItemId>& were_dead) {
    for (const ItemId source : were_dead) {
        if (!is_live(bench, state, source))
            continue;
        for (const ItemId fed : bench.model->item(source).feeds) {
            if (!bench.exists(fed) || !present(bench, state, fed))
                continue;
            for (const ItemId part : moved_with(bench, state, fed))
                charge(bench, state, part);
        }
    }
}

} // namespace matchmark::bench
