// Reads from the functions of a device what its sources drive.
#include "model/driven.hpp"

#include "model/sources.hpp"

#include <algorithm>

namespace matchmark::model {

namespace {

bool is_driven(const Model& model, const Item& item) {
    if (model.kind(item.kind).moves)
        return true;
    const auto guards = [&](const ItemRef& ref) { return model.kind_of(ref.item).guards; };
    return std::any_of(item.reach.begin(), item.reach.end(), [&](const ReachClause& clause) {
        return std::any_of(clause.ways.begin(), clause.ways.end(), [&](const auto& way) {
            return std::any_of(way.begin(), way.end(), guards);
        });
    });
}

bool feeds_some_of(const Item& source, const std::vector<ItemId>& path) {
    return std::any_of(source.feeds.begin(), source.feeds.end(), [&](ItemId fed) {
        return std::find(path.begin(), path.end(), fed) != path.end();
    });
}

} // namespace

void settle_driven(Model& model) {
    bool found = false;
    for (const Function& function : model.functions) {
        std::vector<ItemId> driven;
        for (const ItemId id : function.through) {
            const Item& item = model.item(id);
            if (!function.is_rating && item.role == Role::part && is_driven(model, item))
                driven.push_back(id);
        }
        if (driven.empty())
            continue;
        const std::vector<ItemId> sources = model.sources.all();
        for (const ItemId source : sources) {
            if (!feeds_some_of(model.item(source), function.through))
                continue;
            auto& feeds = model.items.edit(source.value).feeds;
            for (const ItemId moved : driven) {
                if (moved != source && std::find(feeds.begin(), feeds.end(), moved) == feeds.end())
                    feeds.push_back(moved);
            }
            found = true;
        }
    }
    if (found)
        settle_sources(model);
}

} // namespace matchmark::model
