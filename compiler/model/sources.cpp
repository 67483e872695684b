// Tells each part what feeds it, and each connector what feeds through it.
#include "model/sources.hpp"

namespace matchmark::model {

namespace {

void add_once(std::vector<ItemId>& sources, ItemId source) {
    if (sources.empty() || sources.back() != source)
        sources.push_back(source);
}

} // namespace

void settle_sources(Model& model) {
    auto& items = model.items.edit();
    for (Item& item : items) {
        item.fed_by.clear();
        item.carries_from.clear();
    }
    auto& sources = model.sources.edit();
    sources.clear();
    for (std::uint32_t i = 0; i < items.size(); ++i) {
        if (!items[i].feeds.empty())
            sources.push_back(ItemId{i});
        for (const ItemId fed : items[i].feeds)
            add_once(items[fed.value].fed_by, ItemId{i});
        for (const ItemId connector : items[i].through)
            add_once(items[connector.value].carries_from, ItemId{i});
    }
}

} // namespace matchmark::model
