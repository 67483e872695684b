// Makes devices that mostly come apart: what covers, holds and blocks a thing was mostly made
// before it.
#include "support/random_model.hpp"

#include "model/sources.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::random_model {

using model::Item;
using model::ItemId;
using model::ItemRef;
using model::Kind;
using model::Model;
using model::Role;

namespace {

model::Verb from_outside(model::Verb verb) {
    verb.from_outside = true;
    return verb;
}

void add_hazard(Kind& of, model::StateSet safe, bool on_reach) {
    model::HazardUse use;
    use.safe = safe;
    use.on_reach = on_reach;
    of.hazards.push_back(use);
}

// A part with a second set of states, as of a charge; one that may stay low, a supply takes back.
Kind charged(bool outside, bool on_reach) {
    auto discharge = verb("discharge", 4, 3, 15);
    Kind made = kind(Role::part, {"in", "out"}, {verb("remove", 1, 1, 4), verb("fit", 2, 0, 4)});
    made.states = {"in", "out", "charged", "low"};
    made.set_of = {0, 0, 1, 1};
    made.set_first = {0, 2};
    made.verbs.push_back(outside ? from_outside(discharge) : discharge);
    made.may_end = outside == on_reach ? 8 : 0;
    add_hazard(made, 8, on_reach);
    return made;
}

Kind plugged_supply() {
    Kind made = kind(Role::energy, {"plugged", "unplugged"},
                     {from_outside(verb("unplug", 1, 1, 5)), from_outside(verb("plug", 2, 0, 5))});
    add_hazard(made, 2, true);
    return made;
}

// Off, what it feeds may be opened; proved, it may be touched.
Kind isolated_supply() {
    Kind made =
        kind(Role::energy, {"on", "off", "proved"},
             {from_outside(verb("cut", 1, 1, 30)), verb("prove", 2, 2, 25),
              from_outside(verb("hand-back", 4, 1, 20)), from_outside(verb("restore", 2, 0, 20))});
    add_hazard(made, 6, true);
    add_hazard(made, 4, false);
    return made;
}

constexpr std::size_t part_kinds = 6;
constexpr std::size_t tie_kinds = 7;

// Kinds of every shape that the planner tells apart: parts, ties, then two supplies.
std::vector<Kind> all_kinds() {
    std::vector<Kind> kinds;
    kinds.push_back(
        kind(Role::part, {"in", "out"}, {verb("remove", 1, 1, 4), verb("fit", 2, 0, 4)}));
    kinds.push_back(kind(Role::part, {"shut", "open", "off"},
                         {verb("open", 1, 1, 3), verb("shut", 2, 0, 3), verb("lift", 2, 2, 5),
                          verb("hang", 4, 1, 5)}));
    kinds.push_back(kind(Role::part, {"shut", "open", "off"},
                         {verb("open", 1, 1, 3), verb("shut", 2, 0, 3), verb("lift", 2, 2, 5),
                          verb("hang", 4, 1, 5)}));
    kinds.back().blocks = 3;
    kinds.push_back(charged(true, false));
    kinds.push_back(charged(false, true));
    kinds.push_back(charged(true, true));
    kinds.push_back(
        kind(Role::fastener, {"tight", "out"}, {verb("undo", 1, 1, 8), verb("fasten", 2, 0, 8)}));
    kinds.push_back(kind(Role::fastener, {"tight", "loose"},
                         {verb("slacken", 1, 1, 6), verb("tighten", 2, 0, 6)}));
    kinds.push_back(kind(Role::fastener, {"tight", "loose", "off"},
                         {verb("slacken", 1, 1, 6), verb("undo", 3, 2, 14),
                          verb("fasten", 4, 0, 15), verb("tighten", 2, 0, 8)}));
    kinds.back().binds = 3;
    kinds.push_back(kind(Role::connector, {"locked", "unlocked", "apart"},
                         {verb("unlock", 1, 1, 2), verb("pull", 2, 2, 4), verb("plug", 4, 1, 4),
                          verb("lock", 2, 0, 2)}));
    kinds.push_back(
        kind(Role::connector, {"in", "out"}, {verb("pull", 1, 1, 5), verb("plug", 2, 0, 5)}));
    kinds.back().bare = true;
    kinds.push_back(
        kind(Role::bond, {"set", "parted"}, {verb("part", 1, 1, 30), verb("stick", 2, 0, 30)}));
    kinds.push_back(kind(Role::bond, {"set", "soft", "parted"},
                         {verb("soften", 1, 1, 60), verb("part", 2, 2, 20), verb("stick", 4, 1, 9),
                          verb("cure", 2, 0, 90)}));
    kinds.back().binds = 3;
    kinds.push_back(plugged_supply());
    kinds.push_back(isolated_supply());
    return kinds;
}

// Mostly one made before `i`, so that most goals can be reached.
ItemId other(Chance& chance, std::size_t i, std::size_t count) {
    const bool earlier = i > 0 && !chance.one_in(150);
    std::size_t found = chance.below(earlier ? i : count);
    if (found == i)
        found = i == 0 ? count - 1 : i - 1;
    return ItemId{static_cast<std::uint32_t>(found)};
}

ItemRef ref_to(Chance& chance, const Model& model, ItemId id) {
    ItemRef ref;
    ref.item = id;
    if (model.item(id).count > 1 && chance.one_in(3))
        ref.members = {static_cast<std::uint16_t>(1 + chance.below(model.item(id).count))};
    return ref;
}

// `order[i]` says which item stands at place i from the outside in.
struct Making {
    Chance& chance;
    Model& model;
    std::vector<std::uint32_t> order;

    ItemId outer(std::size_t place) {
        return ItemId{order[other(chance, place, order.size()).value]};
    }
    ItemId outer(std::size_t place, bool part) {
        for (int tries = 0; tries < 20; ++tries) {
            const ItemId found = outer(place);
            if ((model.item(found).role == Role::part) == part)
                return found;
        }
        return {};
    }
};

void add_reach(Making& making, std::size_t place, Item& item) {
    Chance& chance = making.chance;
    const std::size_t clauses = chance.below(3);
    for (std::size_t c = 0; c < clauses; ++c) {
        model::ReachClause clause;
        const std::size_t ways = chance.one_in(3) ? 1 : 2 + chance.below(2);
        for (std::size_t w = 0; w < ways; ++w) {
            std::vector<ItemRef> way;
            for (std::size_t n = 0; n <= chance.below(2); ++n)
                way.push_back(ref_to(chance, making.model, making.outer(place)));
            clause.ways.push_back(std::move(way));
        }
        item.reach.push_back(std::move(clause));
    }
}

void add_need(Making& making, std::size_t place, Item& item) {
    Chance& chance = making.chance;
    model::Need need;
    need.condition.item = ref_to(chance, making.model, making.outer(place));
    const Kind& asked = making.model.kind_of(need.condition.item.item);
    need.condition.state = static_cast<model::StateId>(chance.below(asked.states.size()));
    const auto& verbs = making.model.kind(item.kind).verbs;
    need.verb = verbs[chance.below(verbs.size())].name;
    need.alone = chance.one_in(4);
    if (chance.one_in(4))
        need.or_in = model::in_set(static_cast<model::StateId>(chance.below(asked.states.size())));
    item.needs.push_back(std::move(need));
}

void relate_part(Making& making, std::size_t place, ItemId id) {
    Chance& chance = making.chance;
    Model& model = making.model;
    Item& item = model.items.edit(id.value);
    if (chance.one_in(4)) {
        // Carriers are numbered before what they carry, so that there is no ring.
        const ItemId carrier = making.outer(place, true);
        if (carrier.known() && carrier.value < id.value && model.item(carrier).count == 1) {
            item.carrier = carrier;
            model.items.edit(carrier.value).carried.push_back(id);
        }
    }
    if (chance.one_in(4)) {
        const ItemId blocker = making.outer(place, true);
        if (blocker.known() && blocker != id)
            item.blocked_by.push_back(blocker);
    }
    if (chance.one_in(3)) {
        for (std::size_t n = 0; n <= chance.below(2); ++n) {
            const ItemId tie = making.outer(place, false);
            auto& touches = model.items.edit(tie.known() ? tie.value : 0).touches;
            if (!tie.known() || !model::is_tie(model.item(tie).role) ||
                std::find(touches.begin(), touches.end(), id) != touches.end())
                continue;
            touches.push_back(id);
            item.ties.push_back(tie);
        }
    }
}

void relate_tie(Making& making, std::size_t place, ItemId id) {
    Model& model = making.model;
    // It holds things further in than itself.
    for (int n = 0; n < 2; ++n) {
        const std::size_t left = making.order.size() - place - 1;
        const std::size_t at = place + 1 + making.chance.below(left);
        if (left == 0 || at >= making.order.size())
            return;
        const ItemId part{making.order[at]};
        auto& touches = model.items.edit(id.value).touches;
        if (model.item(part).role != Role::part ||
            std::find(touches.begin(), touches.end(), part) != touches.end())
            continue;
        touches.push_back(part);
        model.items.edit(part.value).ties.push_back(id);
    }
}

void relate_supply(Making& making, Item& item) {
    for (std::size_t n = 0; n <= making.chance.below(3); ++n) {
        const ItemId fed = making.outer(making.order.size() - 1, true);
        if (fed.known() && std::find(item.feeds.begin(), item.feeds.end(), fed) == item.feeds.end())
            item.feeds.push_back(fed);
    }
    for (std::uint32_t i = 0; i < making.model.items.size(); ++i) {
        if (making.model.items[i].role == Role::connector && making.chance.one_in(6))
            item.through.push_back(ItemId{i});
    }
}

} // namespace

model::Verb verb(const char* name, model::StateSet from, model::StateId to, double seconds) {
    model::Verb made;
    made.name = name;
    made.from = from;
    made.to = to;
    if (seconds > 0)
        made.takes = model::make_quantity(seconds, "s");
    return made;
}

Kind kind(Role role, std::vector<std::string> states, std::vector<model::Verb> verbs) {
    Kind made;
    made.name = made.title = states.front();
    made.role = role;
    made.set_of.assign(states.size(), 0);
    made.set_first = {0};
    model::StateSet all_but_last = 0;
    for (std::size_t i = 0; i + 1 < states.size(); ++i)
        all_but_last |= model::in_set(static_cast<model::StateId>(i));
    made.states = std::move(states);
    made.verbs = std::move(verbs);
    made.present = all_but_last;
    made.covers = made.blocks = made.live = 1;
    made.binds = role == Role::connector ? all_but_last : 1;
    return made;
}

ItemId add_item(Model& model, std::size_t of, std::uint16_t count) {
    Item item;
    item.name = item.title = fmt::format("item-{}", model.items.size());
    item.kind = model::KindId{static_cast<std::uint32_t>(of)};
    const Kind& made = model.kinds[of];
    item.role = made.role;
    item.count = count;
    item.first_slot = model.slot_count;
    item.first_member = model.member_count;
    model.slot_count += static_cast<std::uint32_t>(count * made.set_count());
    model.member_count += count;
    model.items.edit().push_back(std::move(item));
    return ItemId{static_cast<std::uint32_t>(model.items.size() - 1)};
}

Model random_device(Chance& chance, std::size_t most_items) {
    Model model;
    model.kinds = all_kinds();
    // Every one is a little different, so that costs seldom tie.
    for (Kind& one : model.kinds.edit()) {
        for (model::Verb& how : one.verbs)
            how.takes =
                model::make_quantity(how.takes->value + static_cast<double>(chance.below(4)), "s");
    }
    const std::size_t count = 8 + chance.below(most_items - 8);
    for (std::size_t i = 0; i < count; ++i) {
        const bool part = chance.below(5) < 2;
        // Dangerous things are rarer than others.
        const std::size_t which =
            part ? chance.below(chance.one_in(3) ? part_kinds : 3)
                 : part_kinds +
                       (chance.one_in(12) ? tie_kinds + chance.below(2) : chance.below(tie_kinds));
        const bool group = !part && which < part_kinds + tie_kinds && chance.one_in(4);
        add_item(model, which, group ? 3 : 1);
    }
    Making making{chance, model, {}};
    for (std::uint32_t i = 0; i < count; ++i)
        making.order.push_back(i);
    for (std::size_t left = count; left > 1; --left)
        std::swap(making.order[left - 1], making.order[chance.below(left)]);
    for (std::size_t place = 0; place < count; ++place) {
        const ItemId id{making.order[place]};
        Item& item = model.items.edit(id.value);
        if (item.role == Role::part) {
            relate_part(making, place, id);
        } else if (model::is_tie(item.role)) {
            relate_tie(making, place, id);
        } else {
            relate_supply(making, item);
            continue;
        }
        add_reach(making, place, model.items.edit(id.value));
        if (chance.one_in(16))
            add_need(making, place, model.items.edit(id.value));
    }
    model::settle_sources(model);
    return model;
}

plan::WayInGoal random_goal(Chance& chance, const Model& model) {
    plan::WayInGoal goal;
    goal.expose = chance.one_in(4);
    // Far in, where there is something to be found.
    std::vector<std::size_t> parts;
    for (std::size_t i = 0; i < model.items.size(); ++i) {
        if (model.items[i].role == Role::part && !model.items[i].reach.empty())
            parts.push_back(i);
    }
    for (std::size_t n = 0; n <= chance.below(2) && !parts.empty(); ++n)
        goal.items.push_back(ItemId{static_cast<std::uint32_t>(parts[chance.below(parts.size())])});
    if (goal.items.empty())
        goal.items.push_back(ItemId{0});
    return goal;
}

} // namespace matchmark::random_model
