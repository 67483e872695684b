// How far power goes from what it feeds: along carriers, and through connectors that bind.
#include "bench/power.hpp"

#include "bench/isolation.hpp"

#include <algorithm>

namespace matchmark::bench {

using model::contains;
using model::Item;
using model::Kind;
using model::Role;

bool passes_with_time(const Kind& kind, unsigned set) {
    return std::any_of(kind.verbs.begin(), kind.verbs.end(), [&](const model::Verb& verb) {
        return kind.set_of[verb.to] == set && verb.to != kind.set_first[set] &&
               (verb.waits || verb.decays);
    });
}

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

namespace {

enum class Towards : unsigned char { what_is_fed, what_feeds };

// Carriers feed what they carry; a connector, either way.
class PowerSpread {
public:
    PowerSpread(const Bench& bench, const State* state, Towards towards)
        : bench_(bench), state_(state), towards_(towards) {
        spread_.has_item.resize(bench.model->items.size());
    }

    void add_all(const std::vector<ItemId>& items) {
        for (const ItemId id : items)
            add(id);
    }

    UnderPower all() {
        for (std::size_t i = 0; i < spread_.items.size(); ++i) {
            const Item& item = bench_.model->item(spread_.items[i]);
            if (towards_ == Towards::what_is_fed)
                add_all(item.carried);
            else if (item.carrier.known())
                add(item.carrier);
            add_beside(item);
            for (const ItemId tie : item.ties) {
                if (bench_.model->item(tie).role == Role::connector && joins(tie))
                    add_all(bench_.model->item(tie).touches);
            }
        }
        return std::move(spread_);
    }

private:
    void add(ItemId id) {
        if (spread_.has(id) || !bench_.exists(id) || !there(id))
            return;
        spread_.has_item[id.value] = true;
        spread_.items.push_back(id);
    }
    // An element in a boiler heats what else is in there: its pressure, its heat.
    void add_beside(const Item& item) {
        const bool is_energy = item.role == Role::energy;
        if (!item.carrier.known() || (towards_ == Towards::what_feeds && !is_energy))
            return;
        for (const ItemId id : bench_.model->item(item.carrier).carried) {
            if (towards_ == Towards::what_feeds || bench_.model->item(id).role == Role::energy)
                add(id);
        }
    }
    [[nodiscard]] bool there(ItemId id) const {
        return state_ == nullptr || bench_.model->item(id).role == Role::energy ||
               present(bench_, *state_, id);
    }
    [[nodiscard]] bool joins(ItemId tie) const {
        return bench_.exists(tie) && (state_ == nullptr || binds(bench_, *state_, tie));
    }

    const Bench& bench_;
    const State* state_;
    Towards towards_;
    UnderPower spread_;
};

bool cut_at_once(const Kind& kind) {
    return std::any_of(kind.verbs.begin(), kind.verbs.end(), [&](const model::Verb& verb) {
        return verb.from_outside && (verb.from & kind.live) != 0 && !contains(kind.live, verb.to) &&
               !verb.waits && !verb.decays;
    });
}

bool may_supply(const Kind& kind) {
    return model::cut_from_outside(kind) && !model::carries_matter(kind) &&
           (kind.moves || cut_at_once(kind) || taken_back(kind, 0) == 0);
}

// Sources are many and their kinds few: most devices are known by these to have no supply.
bool any_supply_on(const Bench& bench, const State& state, ItemId but) {
    const model::Model& model = *bench.model;
    const auto& kinds = model.source_kinds;
    return std::any_of(kinds.begin(), kinds.end(),
                       [&](model::KindId kind) { return may_supply(model.kind(kind)); }) &&
           std::any_of(model.sources.begin(), model.sources.end(), [&](ItemId id) {
               return id != but && is_supply(bench, id) && is_live(bench, state, id);
           });
}

// The part from which power goes on to the item, of which `leading` are all, among those that the
// source feeds; unknown when it does not come there.
ItemId fed_towards(const Bench& bench, const UnderPower& leading, ItemId source, ItemId item) {
    for (const ItemId part : bench.model->item(source).feeds) {
        if (bench.exists(part) && (is_everywhere(bench, item) || leading.has(part)))
            return part;
    }
    return {};
}

} // namespace

UnderPower under_power_with(const Bench& bench, const State* state,
                            const std::vector<ItemId>& parts) {
    PowerSpread spread(bench, state, Towards::what_is_fed);
    spread.add_all(parts);
    return spread.all();
}

std::vector<ItemId> fed_by_all(const Bench& bench, const std::vector<ItemId>& sources) {
    std::vector<ItemId> fed;
    for (const ItemId source : sources) {
        const auto& feeds = bench.model->item(source).feeds;
        fed.insert(fed.end(), feeds.begin(), feeds.end());
    }
    return fed;
}

UnderPower leading_to(const Bench& bench, const State* state, const std::vector<ItemId>& items) {
    PowerSpread spread(bench, state, Towards::what_feeds);
    spread.add_all(items);
    return spread.all();
}

bool is_everywhere(const Bench& bench, ItemId id) {
    const Item& item = bench.model->item(id);
    return item.role == Role::energy && !item.carrier.known();
}

bool is_supply(const Bench& bench, ItemId id) {
    return bench.exists(id) && !bench.model->item(id).feeds.empty() &&
           may_supply(bench.model->kind_of(id));
}

std::vector<ItemId> supplies_of(const Bench& bench, ItemId item) {
    std::vector<ItemId> supplies = bench.model->sources.all();
    std::erase_if(supplies, [&](ItemId id) { return id == item || !is_supply(bench, id); });
    if (supplies.empty())
        return supplies;
    const UnderPower leading = leading_to(bench, nullptr, {item});
    std::erase_if(supplies,
                  [&](ItemId id) { return !fed_towards(bench, leading, id, item).known(); });
    return supplies;
}

bool is_taken_back(const Kind& kind, const model::Verb& verb) {
    const bool flows = kind.role == Role::energy || kind.role == Role::fluid;
    return !kind.hazards.empty() && (!flows || verb.waits || verb.decays) &&
           contains(taken_back(kind, kind.set_of[verb.to]), verb.to);
}

std::optional<StillLive> supply_still_on(const Bench& bench, const State& state, const Act& act) {
    const Kind& kind = bench.model->kind_of(act.item);
    if (!is_taken_back(kind, kind.verbs[act.verb]))
        return std::nullopt;
    if (!any_supply_on(bench, state, act.item))
        return std::nullopt;
    const UnderPower leading = leading_to(bench, &state, {act.item});
    std::optional<StillLive> first; // of several, the one declared first
    const auto look_at = [&](ItemId id) {
        if (id == act.item || (first && first->source.value <= id.value) || !is_supply(bench, id) ||
            !is_live(bench, state, id))
            return;
        const ItemId fed = fed_towards(bench, leading, id, act.item);
        if (fed.known())
            first = StillLive{id, fed};
    };
    if (is_everywhere(bench, act.item)) {
        for (const ItemId id : bench.model->sources)
            look_at(id);
    }
    for (const ItemId item : leading.items) {
        for (const ItemId id : bench.model->item(item).fed_by)
            look_at(id);
    }
    return first;
}

} // namespace matchmark::bench
