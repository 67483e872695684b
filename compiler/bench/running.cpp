// Finds what a test sets going: by the sources that are on, or by a function that needs none.
#include "bench/running.hpp"

#include "bench/exposure.hpp"
#include "bench/isolation.hpp"
#include "bench/power.hpp"
#include "bench/proof.hpp"
#include "bench/recharge.hpp"

#include <algorithm>

namespace matchmark::bench {

using model::Item;
using model::Role;

namespace {

bool proves_a_function(const Bench& bench, const model::Step& test) {
    return std::any_of(test.proves.begin(), test.proves.end(), [&](const model::Proof& proof) {
        return proof.function.known() && !bench.model->functions[proof.function.value].is_rating;
    });
}

// Whatever feeds, but for heat and the like.
bool is_source(const Bench& bench, ItemId id) {
    return bench.exists(id) && !bench.model->item(id).feeds.empty() &&
           (is_supply(bench, id) || !model::cut_from_outside(bench.model->kind_of(id)));
}

std::vector<ItemId> all_sources(const Bench& bench) {
    std::vector<ItemId> sources = bench.model->sources.all();
    std::erase_if(sources, [&](ItemId id) { return !is_source(bench, id); });
    return sources;
}

UnderPower under_power_of(const Bench& bench, const State* state,
                          const std::vector<ItemId>& sources) {
    return under_power_with(bench, state, fed_by_all(bench, sources));
}

// Those that may come to any of the items; to a tie, where they come to what it ties.
std::vector<ItemId> sources_coming_to(const Bench& bench, std::vector<ItemId> items) {
    for (std::size_t i = items.size(); i-- > 0;) {
        const auto& touches = bench.model->item(items[i]).touches;
        items.insert(items.end(), touches.begin(), touches.end());
    }
    if (items.empty())
        return {};
    const UnderPower leading = leading_to(bench, nullptr, items);
    std::vector<ItemId> sources = all_sources(bench);
    std::erase_if(sources, [&](ItemId source) {
        const auto& feeds = bench.model->item(source).feeds;
        return !among(items, source) && std::none_of(feeds.begin(), feeds.end(),
                                                     [&](ItemId fed) { return leading.has(fed); });
    });
    return sources;
}

bool lies_on(const Bench& bench, const std::vector<ItemId>& path, ItemId item) {
    for (ItemId at = item; at.known(); at = bench.model->item(at).carrier) {
        if (among(path, at))
            return true;
    }
    return false;
}

// Does the test prove the function, or by name a part of its path?
bool is_tried(const Model& model, const model::Step& test, const std::vector<ItemId>& renewed,
              std::uint32_t function) {
    const auto& path = model.functions[function].through;
    return std::any_of(test.proves.begin(), test.proves.end(),
                       [&](const model::Proof& proof) {
                           return proof.function.known() ? proof.function.value == function
                                                         : among(path, proof.item);
                       }) ||
           (test.proves.empty() && std::any_of(renewed.begin(), renewed.end(),
                                               [&](ItemId item) { return among(path, item); }));
}

// Not while all that comes to its path is off: an engine that is disarmed. Without a state: as far
// as the test says itself where these stand.
bool may_go(const Bench& bench, const State* state, const model::Step& test,
            const std::vector<ItemId>& path) {
    const std::vector<ItemId> sources = sources_coming_to(bench, path);
    return sources.empty() || std::any_of(sources.begin(), sources.end(), [&](ItemId source) {
               return state != nullptr ? is_live(bench, *state, source) : !says_where(test, source);
           });
}

// What no source comes to gets hot by the functions on whose path it lies; by any, when nobody said
// which.
bool is_worked_by(const Bench& bench, const State* state, const model::Step& test,
                  const std::vector<ItemId>& renewed, ItemId item) {
    const auto& functions = bench.model->functions;
    bool on_some_path = false;
    for (std::uint32_t f = 0; f < functions.size(); ++f) {
        if (functions[f].is_rating || !lies_on(bench, functions[f].through, item))
            continue;
        on_some_path = true;
        if (is_tried(*bench.model, test, renewed, f) &&
            may_go(bench, state, test, functions[f].through))
            return true;
    }
    return !on_some_path;
}

bool is_cell(const Item& item) { return item.role == Role::part && !item.feeds.empty(); }

// Running does not charge what it runs by: a cell.
bool may_be_brought_back(const Bench& bench, ItemId id) {
    return !is_cell(bench.model->item(id)) && holds_a_charge(bench, id);
}

struct BroughtBack {
    std::vector<ItemId> by_supply;
    std::vector<ItemId> by_running;
};

// With a state: as the device stands.
BroughtBack brought_back(const Bench& bench, const State* state, const model::Step& test,
                         const std::vector<ItemId>& renewed, const std::vector<ItemId>& sources) {
    BroughtBack all;
    all.by_supply = under_power_of(bench, state, sources).items;
    const UnderPower fed = under_power_of(bench, nullptr, all_sources(bench));
    for (std::uint32_t i = 0; i < bench.model->items.size(); ++i) {
        const ItemId id{i};
        if (!may_be_brought_back(bench, id))
            continue;
        const Item& item = bench.model->items[i];
        const ItemId piece = item.role == Role::energy ? item.carrier : id;
        const bool here = state == nullptr || !place(bench, *state, piece).known();
        const bool driven = is_everywhere(bench, id) || (here && !fed.has(id));
        if (driven && is_worked_by(bench, state, test, renewed, id))
            all.by_running.push_back(id);
    }
    for (auto* items : {&all.by_supply, &all.by_running}) {
        std::erase_if(*items, [&](ItemId id) {
            return !may_be_brought_back(bench, id) || says_where(test, id);
        });
    }
    return all;
}

// Asked of the kinds: items are many. A cell is not charged by what runs.
bool nothing_to_bring_back(const Model& model) {
    const auto& kinds = model.other_kinds;
    return std::none_of(kinds.begin(), kinds.end(),
                        [&](model::KindId kind) { return may_hold_a_charge(model.kind(kind)); });
}

} // namespace

std::vector<ItemId> tried_by(const Bench& bench, const model::Step& test,
                             const std::vector<ItemId>& renewed) {
    std::vector<ItemId> items = test.proves.empty() ? renewed : std::vector<ItemId>{};
    for (const model::Proof& proof : test.proves) {
        if (proof.item.known())
            items.push_back(proof.item);
        if (!proof.function.known())
            continue;
        const model::Function& function = bench.model->functions[proof.function.value];
        if (!function.is_rating)
            items.insert(items.end(), function.through.begin(), function.through.end());
    }
    std::erase_if(items, [&](ItemId item) {
        return !bench.exists(item) || (model::is_tie(bench.model->item(item).role) &&
                                       bench.model->kind_of(item).asks_test);
    });
    return items;
}

bool says_where(const model::Step& test, ItemId item) {
    return std::any_of(test.when.begin(), test.when.end(), [&](const model::Condition& condition) {
        return condition.item.item == item;
    });
}

std::vector<ItemId> brought_back_by(const Bench& bench, const model::Step& test,
                                    const std::vector<ItemId>& renewed) {
    if (nothing_to_bring_back(*bench.model))
        return {};
    const auto tried = tried_by(bench, test, renewed);
    const auto sources = sources_coming_to(bench, tried);
    if (tried.empty() || (sources.empty() && !proves_a_function(bench, test)))
        return {};
    BroughtBack all = brought_back(bench, nullptr, test, renewed, sources);
    all.by_supply.insert(all.by_supply.end(), all.by_running.begin(), all.by_running.end());
    return std::move(all.by_supply);
}

std::vector<ItemId> set_going_by(const Bench& bench, const model::Step& test,
                                 const std::vector<ItemId>& renewed) {
    return sources_coming_to(bench, tried_by(bench, test, renewed));
}

void run(const Bench& bench, State& state, const model::Step& test,
         const std::vector<ItemId>& renewed, Running how) {
    if (nothing_to_bring_back(*bench.model))
        return;
    const auto tried = tried_by(bench, test, renewed);
    std::vector<ItemId> sources = sources_coming_to(bench, tried);
    const bool needs_a_source = !sources.empty();
    std::erase_if(sources, [&](ItemId source) { return !is_live(bench, state, source); });
    // Energy has no place to be back at: whether it is on is asked of the sources.
    const bool back = std::all_of(tried.begin(), tried.end(), [&](ItemId item) {
        return bench.model->item(item).role == Role::energy || is_back(bench, state, item);
    });
    if (tried.empty() || !back ||
        (needs_a_source ? sources.empty() : !proves_a_function(bench, test)))
        return;
    const BroughtBack all = brought_back(bench, &state, test, renewed, sources);
    for (const ItemId id : all.by_supply)
        charge(bench, state, id, Charged::by_its_supply);
    if (how == Running::sources_alone)
        return;
    for (const ItemId id : all.by_running)
        charge(bench, state, id, Charged::by_running);
}

bool may_power(const Bench& bench, ItemId source, ItemId item) {
    return is_source(bench, source) && under_power_of(bench, nullptr, {source}).has(item);
}

bool is_work_on(const Bench& bench, ItemId acted, const model::Verb& verb, ItemId danger) {
    if (verb.from_outside)
        return false;
    const ItemId carrier = bench.model->item(danger).carrier;
    const auto& ties = bench.model->item(acted).touches;
    return acted == danger || among(ties, danger) ||
           (carrier.known() && (acted == carrier || among(ties, carrier)));
}

std::vector<ItemId> hurt_on_touch(const Bench& bench, std::vector<ItemId> items) {
    std::erase_if(items, [&](ItemId id) {
        const auto& hazards = bench.model->kind_of(id).hazards;
        return !is_met_by_hand(bench.model->item(id)) ||
               std::all_of(hazards.begin(), hazards.end(),
                           [](const model::HazardUse& use) { return use.on_reach; });
    });
    return items;
}

} // namespace matchmark::bench
