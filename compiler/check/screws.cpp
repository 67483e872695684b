// Which screws come off, and which of them must not change places.
#include "check/screws.hpp"

#include "model/look_alikes.hpp"

#include <algorithm>
#include <map>
#include <string>
#include <tuple>

namespace matchmark::check {

namespace {

// What may differ between two screws.
using Sort = std::tuple<model::KindId, std::string, double, double, bool, std::string>;

Sort sort_of(const model::Item& item) {
    std::string spec;
    for (const model::SpecPhrase& phrase : item.spec)
        spec += phrase->text + ",";
    return {item.kind,
            item.bolt->thread,
            item.bolt->length_mm,
            item.rare->depth ? item.rare->depth->base : -1,
            item.told_by->empty(),
            std::move(spec)};
}

} // namespace

std::vector<model::ItemId> screws_taken_off(const Walk& walk) {
    std::vector<model::ItemId> items;
    std::vector<bool> listed(walk.model.items.size());
    for (const Event& event : walk.events) {
        if (!event.act)
            continue;
        const model::Item& item = walk.model.item(event.act->item);
        const model::Kind& kind = walk.model.kind(item.kind);
        if (item.role != model::Role::fastener ||
            model::contains(kind.present, kind.verbs[event.act->verb].to))
            continue;
        if (!listed[event.act->item.value])
            items.push_back(event.act->item);
        listed[event.act->item.value] = true;
    }
    return items;
}

std::vector<ScrewPair>
pairs_taken_off(const Walk& walk,
                const std::function<bool(const model::Item&, const model::Item&)>& asked) {
    const std::vector<model::ItemId> items = screws_taken_off(walk);
    std::map<Sort, std::size_t> known;
    std::vector<const model::Item*> sorts; // one screw of each
    std::vector<std::size_t> sort;         // of each of the items
    for (const model::ItemId id : items) {
        const model::Item& item = walk.model.item(id);
        const auto [entry, added] = known.try_emplace(sort_of(item), sorts.size());
        if (added)
            sorts.push_back(&item);
        sort.push_back(entry->second);
    }
    std::vector<std::vector<bool>> pairing(sorts.size(), std::vector<bool>(sorts.size()));
    for (std::size_t a = 0; a < sorts.size(); ++a) {
        for (std::size_t b = 0; b < sorts.size(); ++b)
            pairing[a][b] = a != b && asked(*sorts[a], *sorts[b]);
    }
    std::vector<ScrewPair> pairs;
    for (std::size_t i = 0; i < items.size(); ++i) {
        const std::vector<bool>& with = pairing[sort[i]];
        if (std::find(with.begin(), with.end(), true) == with.end())
            continue;
        for (std::size_t j = i + 1; j < items.size(); ++j) {
            if (with[sort[j]])
                pairs.push_back({items[i], items[j]});
        }
    }
    return pairs;
}

bool told_apart(const model::Item& one, const model::Item& other) {
    return !one.told_by->empty() || !other.told_by->empty();
}

bool harmful_swap(const model::Item& one, const model::Item& other) {
    const auto harms = [](const model::Item& screw, const model::Item& hole) {
        return model::passes_depth_by(screw, hole) > 0 && model::passes_depth_by(hole, hole) <= 0;
    };
    return (harms(one, other) || harms(other, one)) && model::goes_into(one, other);
}

} // namespace matchmark::check
