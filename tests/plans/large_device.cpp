// Builds a large device from the outside in: each part lies behind some before it, and is held by
// ties of its own.
#include "plans/large_device.hpp"

#include "model/sources.hpp"

#include <algorithm>

namespace matchmark::plans {

using model::Item;
using model::ItemId;
using model::Model;
using model::Role;

namespace {

enum Sort : std::size_t { plain, lid, screws, clips, plug, latch, tape, mains, sorts };

// Every device a little different, so that costs seldom tie.
std::vector<model::Kind> kinds_of_a_machine(Chance& chance) {
    std::vector<model::Kind> kinds(sorts);
    kinds[plain] = kind(Role::part, {"in", "out"}, {verb("remove", 1, 1, 4), verb("fit", 2, 0, 4)});
    kinds[lid] = kind(Role::part, {"shut", "open", "off"},
                      {verb("open", 1, 1, 3), verb("shut", 2, 0, 3), verb("lift", 3, 2, 6),
                       verb("hang", 4, 1, 6)});
    kinds[screws] =
        kind(Role::fastener, {"tight", "out"}, {verb("undo", 1, 1, 8), verb("fasten", 2, 0, 8)});
    kinds[clips] =
        kind(Role::fastener, {"shut", "open"}, {verb("unclip", 1, 1, 3), verb("clip", 2, 0, 2)});
    kinds[plug] =
        kind(Role::connector, {"in", "out"}, {verb("pull", 1, 1, 5), verb("plug", 2, 0, 5)});
    kinds[latch] = kind(Role::connector, {"locked", "unlocked", "apart"},
                        {verb("unlock", 1, 1, 2), verb("pull", 2, 2, 4), verb("plug", 4, 1, 4),
                         verb("lock", 2, 0, 2)});
    kinds[tape] =
        kind(Role::bond, {"stuck", "parted"}, {verb("part", 1, 1, 40), verb("stick", 2, 0, 30)});
    kinds[tape].one_use = true;
    kinds[mains] =
        kind(Role::energy, {"on", "off"}, {verb("unplug", 1, 1, 5), verb("plug", 2, 0, 5)});
    for (model::Verb& how : kinds[mains].verbs)
        how.from_outside = true;
    model::HazardUse shock;
    shock.safe = 2;
    shock.on_reach = true;
    kinds[mains].hazards.push_back(shock);
    for (model::Kind& one : kinds) {
        for (model::Verb& how : one.verbs)
            how.takes = model::make_quantity(
                how.takes->value + static_cast<double>(chance.below(40)) / 10, "s");
    }
    return kinds;
}

// One of the last few parts; `but` so many.
ItemId near(Chance& chance, const std::vector<ItemId>& parts, std::size_t window,
            std::size_t but = 0) {
    const std::size_t count = parts.size() - but;
    return parts[count - 1 - chance.below(std::min(window, count))];
}

void put_behind(Model& model, ItemId item, const std::vector<std::vector<ItemId>>& ways) {
    model::ReachClause clause;
    for (const auto& way : ways) {
        auto& refs = clause.ways.emplace_back();
        for (const ItemId other : way) {
            refs.emplace_back();
            refs.back().item = other;
        }
    }
    model.items.edit(item.value).reach.push_back(std::move(clause));
}

void tie_down(Model& model, ItemId tie, ItemId part, ItemId to) {
    for (const ItemId end : {part, to}) {
        model.items.edit(tie.value).touches.push_back(end);
        model.items.edit(end.value).ties.push_back(tie);
    }
}

// A tie that holds the part to one further in: that one comes off after it.
ItemId add_tie(Chance& chance, Model& model) {
    const std::size_t which = screws + chance.below(tape - screws + (chance.one_in(4) ? 1 : 0));
    const bool group = which == screws;
    const ItemId tie =
        add_item(model, which, static_cast<std::uint16_t>(group ? 2 + chance.below(5) : 1));
    model.items.edit(tie.value).one_use = which == tape;
    return tie;
}

} // namespace

Model large_device(Chance& chance, std::size_t items, std::size_t alternatives) {
    Model model;
    model.kinds = kinds_of_a_machine(chance);
    const ItemId supply = add_item(model, mains);
    std::vector<ItemId> parts;
    std::vector<ItemId> untied; // ties that wait for the next part to be tied to
    std::size_t choices = 0;
    while (model.items.size() < items) {
        const ItemId part = add_item(model, chance.one_in(4) ? lid : plain);
        for (const ItemId tie : untied)
            tie_down(model, tie, parts.back(), part);
        untied.clear();
        if (!parts.empty())
            put_behind(model, part, {{near(chance, parts, 40)}});
        // The alternatives are spread evenly.
        const std::size_t due = alternatives * model.items.size() / items;
        for (; choices < due && parts.size() > 3; ++choices) {
            std::vector<std::vector<ItemId>> ways;
            for (std::size_t w = 0; w < 2 + chance.below(2); ++w) {
                ways.push_back({near(chance, parts, 60)});
                if (chance.one_in(3))
                    ways.back().push_back(near(chance, parts, 60));
            }
            put_behind(model, part, ways);
        }
        parts.push_back(part);
        for (std::size_t n = 0; n <= chance.below(2) && model.items.size() < items; ++n) {
            untied.push_back(add_tie(chance, model));
            if (parts.size() > 2 && chance.one_in(3))
                put_behind(model, untied.back(),
                           {{near(chance, parts, 20, 1)}}); // not what it holds
        }
        if (chance.one_in(12) && parts.size() > 4)
            model.items.edit(part.value).blocked_by.push_back(parts[parts.size() - 2]);
        if (parts.size() == 20)
            model.items.edit(supply.value).feeds.push_back(part);
    }
    model::settle_sources(model);
    return model;
}

plan::WayInGoal deep_goal(const Model& model, std::size_t count) {
    plan::WayInGoal goal;
    for (std::size_t i = model.items.size(); i-- > 0 && goal.items.size() < count;) {
        if (model.items[i].role == Role::part)
            goal.items.push_back(ItemId{static_cast<std::uint32_t>(i)});
    }
    return goal;
}

} // namespace matchmark::plans
