// Lists what a device's lines say of one item and another, and takes one of them away.
#include "plan/relations.hpp"

#include "plan/work_time.hpp"

#include <algorithm>

namespace matchmark::plan {

using model::Item;
using model::ItemId;
using model::Kind;
using model::Model;
using model::Role;

namespace {

// The fastener, used again, of which the device has most: what a bond would be instead.
ItemId usual_fastener(const bench::Bench& bench) {
    ItemId found;
    for (std::uint32_t i = 0; i < bench.model->items.size(); ++i) {
        const Item& item = bench.model->items[i];
        const bool more = !found.known() || item.count > bench.model->item(found).count;
        if (item.role == Role::fastener && !item.one_use && bench.exists(ItemId{i}) && more)
            found = ItemId{i};
    }
    return found;
}

void add_of_item(const bench::Bench& bench, ItemId id, std::vector<Relation>& all) {
    const Item& item = bench.model->item(id);
    for (std::uint32_t line = 0; line < item.reach.size(); ++line) {
        std::vector<ItemId> told;
        for (const auto& way : item.reach[line].ways) {
            for (const auto& ref : way) {
                if (!bench.exists(ref.item) || among(told, ref.item))
                    continue;
                told.push_back(ref.item);
                all.push_back(
                    {RelationSort::in_the_way, id, ref.item, line, item.reach[line].span});
            }
        }
    }
    std::vector<ItemId> held;
    std::copy_if(item.touches.begin(), item.touches.end(), std::back_inserter(held),
                 [&](ItemId part) { return bench.exists(part); });
    if (held.size() > 1)
        held.pop_back(); // that to which the others are tied
    for (const ItemId part : held)
        all.push_back({RelationSort::holds, part, id, 0, item.declaration});
    for (const ItemId blocker : item.blocked_by) {
        if (bench.exists(blocker))
            all.push_back(
                {RelationSort::blocks, id, blocker, 0, bench.model->item(blocker).declaration});
    }
    for (std::uint32_t line = 0; line < item.needs.size(); ++line) {
        const ItemId needed = item.needs[line].condition.item.item;
        if (bench.exists(needed))
            all.push_back({RelationSort::needs, id, needed, line, item.needs[line].span});
    }
}

double seconds_of(const Model& model, ItemId fastener) {
    const Item& item = model.item(fastener);
    const Kind& kind = model.kind(item.kind);
    const WorkTimes times(model);
    // The shortest way from assembled to where it no longer binds, verb by verb outwards.
    constexpr double never = 1e18;
    std::vector<double> least(kind.states.size(), never);
    least[kind.set_first.front()] = 0;
    double found = never;
    for (std::size_t s = 0; s < kind.states.size(); ++s) {
        const auto from = static_cast<model::StateId>(s);
        if (kind.set_of[from] == 0 && !model::contains(kind.binds, from))
            found = std::min(found, least[from]);
        for (std::size_t v = 0; v < kind.verbs.size(); ++v) {
            const model::Verb& verb = kind.verbs[v];
            if (model::contains(verb.from, from) && verb.to > from)
                least[verb.to] = std::min(
                    least[verb.to], least[from] + times.act(item.kind, v, item.count).alone());
        }
    }
    return found >= never ? 0 : found;
}

void exchange(Model& model, const Relation& relation) {
    const Item& fastener = model.item(relation.other);
    Kind kind = model.kind_of(relation.item);
    const auto letting_go =
        std::find_if(model.kind(fastener.kind).verbs.begin(), model.kind(fastener.kind).verbs.end(),
                     [&](const model::Verb& verb) {
                         return !model::contains(model.kind(fastener.kind).binds, verb.to);
                     });
    for (model::Verb& verb : kind.verbs) {
        if (kind.set_of[verb.to] != 0 || model::contains(kind.binds, verb.to))
            continue;
        verb.from |= kind.binds; // in one act
        // All members of the bond together take what all of the fastener take.
        const double members = model.item(relation.item).count;
        verb.takes = model::make_quantity(seconds_of(model, relation.other) / members, "s");
        verb.waits.reset();
        if (letting_go != model.kind(fastener.kind).verbs.end()) {
            verb.tools = letting_go->tools;
            verb.by_hand = letting_go->by_hand;
            verb.by_driver = letting_go->by_driver;
        }
    }
    kind.hazards.clear();
    kind.needs.clear();
    Item& bond = model.items.edit(relation.item.value);
    bond.one_use = false;
    bond.bolt.edit().drive = fastener.bolt->drive;
    bond.bolt.edit().drive_size = fastener.bolt->drive_size;
    bond.kind = model::KindId{static_cast<std::uint32_t>(model.kinds.size())};
    model.kinds.edit().push_back(std::move(kind));
}

bool is_dangerous(const Model& model, ItemId id) { return !model.kind_of(id).hazards.empty(); }

// Does some source of danger lie open with the item?
bool feeds_danger(const Model& model, ItemId id) {
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if (is_dangerous(model, ItemId{i}) && (ItemId{i} == id || among(model.items[i].feeds, id)))
            return true;
    }
    return false;
}

bool holds_plainly(const bench::Bench& bench, const Relation& relation) {
    const Model& model = *bench.model;
    const Item& tie = model.item(relation.other);
    const Item& part = model.item(relation.item);
    const auto is_part = [&](ItemId id) { return model.item(id).role == Role::part; };
    const auto is_first = [&](ItemId id) { return model.kind_of(id).laid_first; };
    const auto stays = std::find_if(tie.touches.rbegin(), tie.touches.rend(),
                                    [&](ItemId id) { return bench.exists(id); });
    const bool is_base = stays == tie.touches.rend() || *stays == relation.item;
    if (is_base || !tie.ties.empty() || is_first(relation.other) ||
        !std::all_of(tie.touches.begin(), tie.touches.end(), is_part) ||
        std::any_of(part.ties.begin(), part.ties.end(), is_first))
        return false;
    const bool carries_danger =
        std::any_of(part.carried.begin(), part.carried.end(),
                    [&](ItemId carried) { return is_dangerous(model, carried); });
    if (is_dangerous(model, relation.item) || carries_danger)
        return false;
    if (tie.role != Role::connector)
        return true;
    for (ItemId at = relation.item; at.known(); at = model.item(at).carrier) {
        if (std::any_of(model.items.begin(), model.items.end(),
                        [&](const Item& source) { return among(source.feeds, at); }))
            return false;
    }
    return true;
}

} // namespace

std::vector<Relation> relations_of(const bench::Bench& bench) {
    std::vector<Relation> all;
    for (std::uint32_t i = 0; i < bench.model->items.size(); ++i) {
        if (bench.exists(ItemId{i}))
            add_of_item(bench, ItemId{i}, all);
    }
    const ItemId fastener = usual_fastener(bench);
    for (std::uint32_t i = 0; i < bench.model->items.size() && fastener.known(); ++i) {
        const Item& item = bench.model->items[i];
        if (item.role == Role::bond && item.one_use && bench.exists(ItemId{i}))
            all.push_back({RelationSort::one_use, ItemId{i}, fastener, 0, item.declaration});
    }
    return all;
}

void leave_out(Model& model, const Relation& relation) {
    Item& item = model.items.edit(relation.item.value);
    switch (relation.sort) {
    case RelationSort::in_the_way: {
        auto& clause = item.reach[relation.line];
        bool open = false;
        for (auto& way : clause.ways) {
            const auto end = std::remove_if(way.begin(), way.end(), [&](const auto& ref) {
                return ref.item == relation.other;
            });
            open = open || (end == way.begin() && !way.empty());
            way.erase(end, way.end());
        }
        if (open)
            item.reach.erase(item.reach.begin() + relation.line);
        return;
    }
    case RelationSort::holds:
        std::erase(item.ties, relation.other);
        std::erase(model.items.edit(relation.other.value).touches, relation.item);
        return;
    case RelationSort::blocks:
        std::erase(item.blocked_by.edit(), relation.other);
        return;
    case RelationSort::needs: {
        auto& needs = item.needs.edit();
        needs.erase(needs.begin() + relation.line);
        return;
    }
    case RelationSort::one_use:
        exchange(model, relation);
        return;
    }
}

bool only_loosens(const bench::Bench& bench, const Relation& relation) {
    const Model& model = *bench.model;
    const Item& item = model.item(relation.item);
    switch (relation.sort) {
    case RelationSort::in_the_way: {
        // The whole line may go, and with it what tells members apart.
        const auto& ways = item.reach[relation.line].ways;
        const bool apart = std::any_of(ways.begin(), ways.end(), [](const auto& way) {
            return std::any_of(way.begin(), way.end(),
                               [](const auto& ref) { return !ref.members.empty(); });
        });
        return !apart && !feeds_danger(model, relation.item);
    }
    case RelationSort::holds:
        return holds_plainly(bench, relation);
    case RelationSort::blocks:
        return true;
    case RelationSort::needs:
        return item.needs[relation.line].condition.item.members.empty();
    case RelationSort::one_use:
        return false;
    }
    return false;
}

Relations::Relations(const std::vector<Relation>& relations) {
    for (RelationIndex i = 0; i < relations.size(); ++i)
        known_.emplace(key(relations[i]), i);
}

std::optional<RelationIndex> Relations::find(const Relation& relation) const {
    const auto known = known_.find(key(relation));
    return known == known_.end() ? std::nullopt : std::optional(known->second);
}

} // namespace matchmark::plan
