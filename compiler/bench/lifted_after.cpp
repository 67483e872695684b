// Looks ahead, from the last act to the first, for what is taken off late.
#include "bench/lifted_after.hpp"

#include "model/kind.hpp"

#include <algorithm>
#include <map>

namespace matchmark::bench {

namespace {

// For each part, and for what carries it, the bonds under it that are taken off further on.
using Later = std::map<ItemId, std::vector<ItemId>>;

std::vector<ItemId> with_carriers(const Model& model, ItemId part) {
    std::vector<ItemId> all;
    for (ItemId at = part; at.known(); at = model.item(at).carrier)
        all.push_back(at);
    return all;
}

// It lies on the part named last, and goes with it: only the others come away over it.
void note_bond(const Bench& bench, const Act& act, const model::Verb& verb, Later& later) {
    const Model& model = *bench.model;
    const bool comes_off = act.members.empty() && model::lets_go(model.kind_of(act.item), verb);
    std::vector<ItemId> joined = model.item(act.item).touches;
    std::erase_if(joined, [&](ItemId part) { return !bench.exists(part); });
    if (joined.empty())
        return;
    const std::vector<ItemId> under = with_carriers(model, joined.back());
    for (const ItemId part : joined) {
        for (const ItemId at : with_carriers(model, part)) {
            if (among(under, at))
                break;
            std::vector<ItemId>& bonds = later[at];
            std::erase(bonds, act.item);
            if (comes_off)
                bonds.push_back(act.item);
        }
    }
}

} // namespace

ItemId part_over(const Bench& bench, ItemId seal) {
    const Model& model = *bench.model;
    const auto pressed_by = pressing(bench, seal);
    const bool screwed_on = std::any_of(pressed_by.begin(), pressed_by.end(), [&](ItemId id) {
        return model.item(id).role == model::Role::fastener;
    });
    if (!model.kind_of(seal).lies_loose || !screwed_on)
        return {};
    const auto& joined = model.item(seal).touches;
    const auto found = std::find_if(joined.begin(), joined.end(), [&](ItemId id) {
        const model::Kind& kind = model.kind_of(id);
        const StateSet states = model::states_of_set(kind, 0);
        return bench.exists(id) && kind.role == model::Role::part && id != joined.back() &&
               (states & ~kind.present) != 0;
    });
    return found == joined.end() ? ItemId{} : *found;
}

void note_lifted_after(const Bench& bench, const std::vector<Act*>& acts) {
    Later later;
    for (std::size_t i = acts.size(); i-- > 0;) {
        Act& act = *acts[i];
        const model::Kind& kind = bench.model->kind_of(act.item);
        const model::Verb& verb = kind.verbs[act.verb];
        if (kind.set_of[verb.to] != 0)
            continue;
        if (kind.lies_loose)
            note_bond(bench, act, verb, later);
        const auto found = later.find(act.item);
        act.lifted_after = found == later.end() ? std::vector<ItemId>{} : found->second;
    }
}

} // namespace matchmark::bench
