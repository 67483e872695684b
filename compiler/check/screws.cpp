// Which screws come off, and which of them must not change places.
#include "check/screws.hpp"

#include "model/look_alikes.hpp"

#include <algorithm>

namespace matchmark::check {

std::vector<model::ItemId> screws_taken_off(const Walk& walk) {
    std::vector<model::ItemId> items;
    for (const Event& event : walk.events) {
        if (!event.act)
            continue;
        const model::Item& item = walk.model.item(event.act->item);
        const model::Kind& kind = walk.model.kind(item.kind);
        if (item.role != model::Role::fastener ||
            model::contains(kind.present, kind.verbs[event.act->verb].to))
            continue;
        if (std::find(items.begin(), items.end(), event.act->item) == items.end())
            items.push_back(event.act->item);
    }
    return items;
}

bool told_apart(const model::Item& one, const model::Item& other) {
    return !one.told_by.empty() || !other.told_by.empty();
}

bool harmful_swap(const model::Item& one, const model::Item& other) {
    const auto harms = [](const model::Item& screw, const model::Item& hole) {
        return model::passes_depth_by(screw, hole) > 0 && model::passes_depth_by(hole, hole) <= 0;
    };
    return (harms(one, other) || harms(other, one)) && model::goes_into(one, other);
}

} // namespace matchmark::check
