// Trials seen from the supply: what has to be on, and what must not lie open while it is.
#include "bench/trial_power.hpp"

#include "bench/proof.hpp"
#include "bench/recharge.hpp"
#include "bench/running.hpp"

#include <algorithm>

namespace matchmark::bench {

using model::contains;
using model::Kind;
using model::Role;

namespace {

bool live_when_whole(const Bench& bench, ItemId source) {
    const Kind& kind = bench.model->kind_of(source);
    return bench.exists(source) &&
           std::any_of(kind.set_first.begin(), kind.set_first.end(),
                       [&](StateId first) { return contains(kind.live, first); });
}

// Does the test want the source off, or say itself where it stands?
bool says_of_source(const Bench& bench, const model::Step& test, ItemId source) {
    const auto& through = bench.model->item(source).through;
    return says_where(test, source) ||
           std::any_of(test.when.begin(), test.when.end(), [&](const auto& condition) {
               const ItemId item = condition.item.item;
               return among(through, item) &&
                      !contains(bench.model->kind_of(item).binds, condition.state);
           });
}

// What is fed when the item is at work.
std::vector<ItemId> fed_parts(const Bench& bench, ItemId item) {
    const model::Item& at_work = bench.model->item(item);
    std::vector<ItemId> parts;
    if (at_work.role == Role::part)
        parts = {item};
    if (at_work.role == Role::connector)
        parts = at_work.touches;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const ItemId carrier = bench.model->item(parts[i]).carrier;
        if (carrier.known() && !among(parts, carrier))
            parts.push_back(carrier);
    }
    return parts;
}

// Does it bring power: a plug or a terminal, but no pipe and no earth?
bool leads_power(const Kind& kind) {
    return kind.role == Role::connector && !kind.lets_out && !kind.parted_last && !kind.asks_test;
}

// The parts that come next to these by plugs and terminals, with what they are in.
std::vector<ItemId> joined_to(const Bench& bench, const std::vector<ItemId>& parts) {
    std::vector<ItemId> joined;
    for (const ItemId part : parts) {
        for (const ItemId tie : bench.model->item(part).ties) {
            if (!bench.exists(tie) || !leads_power(bench.model->kind_of(tie)))
                continue;
            for (const ItemId other : fed_parts(bench, tie)) {
                if (!among(parts, other) && !among(joined, other))
                    joined.push_back(other);
            }
        }
    }
    return joined;
}

// Those from which the item works: what it is in, too. What nothing feeds works from what it is
// plugged to, or that is, and so on.
std::vector<ItemId> parts_at_work(const Bench& bench, ItemId item) {
    std::vector<ItemId> parts = fed_parts(bench, item);
    const auto is_fed = [&](ItemId part) {
        const model::Item& one = bench.model->item(part);
        return !one.fed_by.empty() || !one.feeds.empty();
    };
    if (bench.model->item(item).role != Role::part || bench.model->sources.empty())
        return parts;
    while (std::none_of(parts.begin(), parts.end(), is_fed)) {
        const std::vector<ItemId> next = joined_to(bench, parts);
        if (next.empty())
            break;
        parts.insert(parts.end(), next.begin(), next.end());
    }
    return parts;
}

// Is the part itself the source from which another of the items works?
bool feeds_another(const Bench& bench, ItemId part, const std::vector<ItemId>& items) {
    const auto& fed = bench.model->item(part).feeds;
    return !fed.empty() && live_when_whole(bench, part) &&
           std::any_of(items.begin(), items.end(),
                       [&](ItemId item) { return item != part && among(fed, item); });
}

// Does the source only charge what the items work from: a charger, which may be away?
bool only_charges(const Bench& bench, ItemId source, const std::vector<ItemId>& items) {
    const model::Item& charger = bench.model->item(source);
    const std::size_t fed = charger.feeds.size() - charger.feeding->drives.size();
    return fed > 0 && std::all_of(charger.feeds.begin(),
                                  charger.feeds.begin() + static_cast<std::ptrdiff_t>(fed),
                                  [&](ItemId part) { return feeds_another(bench, part, items); });
}

// What presses in the vessel that the item closes, or a joint on it does: what nothing presses on
// leaks nothing.
void add_pressures(const Bench& bench, ItemId item, std::vector<ItemId>& sources) {
    if (bench.model->item(item).role == Role::part) {
        for (const ItemId tie : bench.model->item(item).ties) {
            if (bench.exists(tie) && bench.model->kind_of(tie).lets_out)
                add_pressures(bench, tie, sources);
        }
    }
    for (const model::Need& need : bench.model->item(item).needs) {
        const ItemId pressure = need.condition.item.item;
        if (need.of == model::NeedOf::vessel && bench.model->item(pressure).role == Role::energy &&
            !among(sources, pressure))
            sources.push_back(pressure);
    }
}

// Does the test say where the item stands, or where what charges it does?
bool says_of_danger(const Bench& bench, const model::Step& test, ItemId id) {
    return std::any_of(test.when.begin(), test.when.end(), [&](const auto& condition) {
        const ItemId said = condition.item.item;
        const auto& sources = bench.model->item(said).carries_from;
        return said == id || among(charged_by(bench, said), id) || may_power(bench, said, id) ||
               std::any_of(sources.begin(), sources.end(),
                           [&](ItemId source) { return may_power(bench, source, id); });
    });
}

// Is something beside this item to be other than as assembled?
bool says_what_is_open(const Bench& bench, const model::Step& test, ItemId source) {
    return std::any_of(test.when.begin(), test.when.end(), [&](const auto& condition) {
        const auto& first = bench.model->kind_of(condition.item.item).set_first;
        return condition.item.item != source &&
               std::find(first.begin(), first.end(), condition.state) == first.end();
    });
}

bool may_stay(const Bench& bench, const State& state, ItemId source) {
    const Kind& kind = bench.model->kind_of(source);
    return contains(kind.may_end, state_of(bench, state, source, 0, 0));
}

} // namespace

std::vector<ItemId> sources_feeding(const Bench& bench, const std::vector<ItemId>& items) {
    std::vector<ItemId> sources;
    for (const ItemId item : items) {
        for (const ItemId part : parts_at_work(bench, item)) {
            for (const ItemId source : bench.model->item(part).fed_by) {
                if (source != item && live_when_whole(bench, source) &&
                    !only_charges(bench, source, items))
                    sources.push_back(source);
            }
        }
    }
    std::sort(sources.begin(), sources.end());
    sources.erase(std::unique(sources.begin(), sources.end()), sources.end());
    return sources;
}

std::vector<ItemId> test_sources(const Bench& bench, const model::Step& test,
                                 const std::vector<ItemId>& renewed) {
    if (test.on_dead_circuits)
        return {};
    const auto tried = tried_by(bench, test, renewed);
    std::vector<ItemId> sources = sources_feeding(bench, tried);
    for (const ItemId item : tried)
        add_pressures(bench, item, sources);
    std::erase_if(sources, [&](ItemId source) { return says_of_source(bench, test, source); });
    return sources;
}

bool is_restored(const Bench& bench, const State& state, ItemId source) {
    if (!bench.exists(source) || may_stay(bench, state, source))
        return true;
    std::vector<ItemId> way;
    for (const ItemId connector : bench.model->item(source).through) {
        if (bench.exists(connector))
            way.push_back(connector);
    }
    way.push_back(source);
    return all_back(bench, state, way);
}

bool all_restored(const Bench& bench, const State& state, const std::vector<ItemId>& sources) {
    return std::all_of(sources.begin(), sources.end(),
                       [&](ItemId source) { return is_restored(bench, state, source); });
}

bool is_meant(const Bench& bench, const model::Step& test, ItemId danger) {
    return says_of_danger(bench, test, danger) && says_what_is_open(bench, test, danger);
}

std::optional<Exposure> within_reach(const Bench& bench, const State& state,
                                     const model::Step& test, const Dangers& dangers) {
    for (const ItemId id : dangers.items) {
        if (!is_dangerous(bench, state, id))
            continue;
        const bool meant = is_meant(bench, test, id);
        const auto open = meant ? std::nullopt : open_in_trial(bench, dangers.start, state, id);
        if (open)
            return open;
    }
    return std::nullopt;
}

} // namespace matchmark::bench
