// Taking apart and putting back, on thousands of random devices: whatever the bench allows on the
// way in, it allows reversed on the way out, and everything returns. The derived put-back rests on
// this.
#include "properties/properties.hpp"

#include "bench/bench.hpp"
#include "model/sources.hpp"
#include "support/random_model.hpp"

#include <algorithm>
#include <fmt/core.h>
#include <vector>

using namespace matchmark;
using model::Item;
using model::ItemId;
using model::Kind;
using model::Model;
using model::Role;
using random_model::kind;
using random_model::verb;
using support::Chance;

namespace {

constexpr int symmetric_devices = 20000;
constexpr int most_symmetric_acts = 60;

// Kinds of every shape that the bench tells apart.
std::vector<Kind> all_kinds() {
    std::vector<Kind> kinds;
    kinds.push_back(kind(Role::part, {"in", "out"}, {verb("remove", 1, 1), verb("fit", 2, 0)}));
    kinds.push_back(
        kind(Role::part, {"shut", "open", "off"},
             {verb("open", 1, 1), verb("shut", 2, 0), verb("lift", 2, 2), verb("hang", 4, 1)}));
    kinds.push_back(
        kind(Role::fastener, {"tight", "out"}, {verb("undo", 1, 1), verb("fasten", 2, 0)}));
    kinds.push_back(
        kind(Role::fastener, {"tight", "loose"}, {verb("slacken", 1, 1), verb("tighten", 2, 0)}));
    kinds.back().present = 3;
    kinds.push_back(
        kind(Role::connector, {"locked", "unlocked", "apart"},
             {verb("unlock", 1, 1), verb("pull", 2, 2), verb("plug", 4, 1), verb("lock", 2, 0)}));
    kinds.push_back(kind(Role::bond, {"set", "parted"}, {verb("part", 1, 1), verb("stick", 2, 0)}));
    return kinds;
}

ItemId some_part(Chance& chance, std::size_t parts) {
    return ItemId{static_cast<std::uint32_t>(chance.below(parts))};
}

void relate_part(Chance& chance, Model& model, std::uint32_t i, std::size_t parts) {
    Item& item = model.items.edit(i);
    if (i > 0 && chance.one_in(3))
        item.carrier = ItemId{static_cast<std::uint32_t>(chance.below(i))};
    if (chance.one_in(5)) {
        const ItemId blocked = some_part(chance, parts);
        if (blocked.value != i)
            model.items.edit(blocked.value).blocked_by.push_back(ItemId{i});
    }
    if (chance.one_in(6)) {
        for (int n = 0; n < 2; ++n)
            item.feeds.push_back(some_part(chance, parts));
    }
}

void relate_tie(Chance& chance, Model& model, std::uint32_t i, std::size_t parts) {
    const std::size_t count = 2 + chance.below(2);
    for (std::size_t n = 0; n < count; ++n) {
        const ItemId part = some_part(chance, parts);
        auto& touches = model.items.edit(i).touches;
        if (std::find(touches.begin(), touches.end(), part) != touches.end())
            continue;
        touches.push_back(part);
        model.items.edit(part.value).ties.push_back(ItemId{i});
    }
}

void add_reach(Chance& chance, Model& model, std::uint32_t i) {
    if (!chance.one_in(3))
        return;
    model::ReachClause clause;
    const std::size_t ways = 1 + chance.below(2);
    for (std::size_t w = 0; w < ways; ++w) {
        model::ItemRef ref;
        ref.item = ItemId{static_cast<std::uint32_t>(chance.below(model.items.size()))};
        if (ref.item.value != i)
            clause.ways.push_back({ref});
    }
    if (!clause.ways.empty())
        model.items.edit(i).reach.push_back(clause);
}

Model random_device(Chance& chance) {
    Model model;
    model.kinds = all_kinds();
    const std::size_t parts = 3 + chance.below(5);
    const std::size_t ties = 2 + chance.below(7);
    for (std::size_t i = 0; i < parts + ties; ++i) {
        Item item;
        item.name = fmt::format("item-{}", i);
        item.kind = model::KindId{
            static_cast<std::uint32_t>(i < parts ? chance.below(2) : 2 + chance.below(4))};
        item.role = model.kinds[item.kind.value].role;
        item.count = i >= parts && chance.one_in(4) ? 3 : 1;
        item.first_slot = model.slot_count;
        item.first_member = model.member_count;
        model.slot_count += item.count;
        model.member_count += item.count;
        model.items.edit().push_back(std::move(item));
    }
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if (i < parts) {
            relate_part(chance, model, i, parts);
        } else {
            relate_tie(chance, model, i, parts);
        }
        add_reach(chance, model, i);
    }
    for (std::uint32_t i = 0; i < parts; ++i) {
        Item& item = model.items.edit(i);
        if (item.carrier.known())
            model.items.edit(item.carrier.value).carried.push_back(ItemId{i});
        for (std::uint32_t t = static_cast<std::uint32_t>(parts); t < model.items.size(); ++t) {
            const bool plug = model.items[t].role == Role::connector;
            if (!item.feeds.empty() && plug && chance.one_in(2))
                item.through.push_back(ItemId{t});
        }
    }
    model::settle_sources(model);
    return model;
}

struct Done {
    bench::Act act;
    bench::State before;
};

// A random walk of allowed acts; then each is reversed. False, with a complaint, when one is
// refused.
bool comes_back(Chance& chance, const Model& model, std::size_t& reversed) {
    const bench::Bench device{&model, 0};
    bench::State state = bench::assembled(device);
    std::vector<Done> done;
    for (int i = 0; i < most_symmetric_acts; ++i) {
        const ItemId item{static_cast<std::uint32_t>(chance.below(model.items.size()))};
        const Kind& of = model.kind_of(item);
        const bench::Act act{
            item, static_cast<std::uint16_t>(chance.below(of.verbs.size())), {}, true};
        const bench::State before = state;
        if (!bench::apply(device, state, act))
            done.push_back({act, before});
    }
    for (auto entry = done.rbegin(); entry != done.rend(); ++entry) {
        const auto from = entry->before.slots[model.item(entry->act.item).first_slot];
        const auto back = bench::reversed(model, entry->act, from);
        if (!back || bench::refusal(device, state, *back)) {
            fmt::print("not reversed: verb {} on {}\n",
                       model.kind_of(entry->act.item).verbs[entry->act.verb].name,
                       model.item(entry->act.item).name);
            return false;
        }
        bench::perform(device, state, *back);
        if (state.slots != entry->before.slots) {
            fmt::print("reversed, but not as it was: {}\n", model.item(entry->act.item).name);
            return false;
        }
        ++reversed;
    }
    return true;
}

} // namespace

namespace matchmark::properties {

bool comes_back_together() {
    std::size_t reversed = 0;
    int failed = 0;
    for (int seed = 0; seed < symmetric_devices; ++seed) {
        Chance chance{std::mt19937(static_cast<std::uint32_t>(seed))};
        const Model model = random_device(chance);
        if (!comes_back(chance, model, reversed)) {
            fmt::print("device {} fails\n", seed);
            if (++failed == 10)
                break;
        }
    }
    fmt::print("{} random devices, {} acts reversed, {} devices failed\n", symmetric_devices,
               reversed, failed);
    return failed == 0 && reversed > 100000;
}

} // namespace matchmark::properties
