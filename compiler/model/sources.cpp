// Tells each part what feeds it, and each connector what feeds through it.
#include "model/sources.hpp"

namespace matchmark::model {

namespace {

void add_once(std::vector<ItemId>& sources, ItemId source) {
    if (sources.empty() || sources.back() != source)
        sources.push_back(source);
}

struct Kinds {
    explicit Kinds(std::size_t count) : known(count) {}
    void add(KindId kind) {
        if (!known[kind.value])
            each_once.push_back(kind);
        known[kind.value] = true;
    }
    std::vector<bool> known;
    std::vector<KindId> each_once;
};

} // namespace

void settle_sources(Model& model) {
    auto& items = model.items.edit();
    for (Item& item : items) {
        item.fed_by.clear();
        item.carries_from.clear();
    }
    auto& sources = model.sources.edit();
    sources.clear();
    Kinds of_sources(model.kinds.size());
    Kinds of_others(model.kinds.size());
    for (std::uint32_t i = 0; i < items.size(); ++i) {
        const Item& item = items[i];
        if (item.role != Role::part || item.feeds.empty())
            of_others.add(item.kind);
        if (!item.feeds.empty()) {
            of_sources.add(item.kind);
            sources.push_back(ItemId{i});
        }
        for (const ItemId fed : item.feeds)
            add_once(items[fed.value].fed_by, ItemId{i});
        if (item.feeds.empty())
            continue; // what only passes on is cut with what feeds it
        for (const ItemId connector : item.through)
            add_once(items[connector.value].carries_from, ItemId{i});
        for (const FedThrough& line : *item.lines_through) {
            for (const ItemId connector : line.connectors)
                add_once(items[connector.value].carries_from, ItemId{i});
        }
    }
    model.source_kinds = std::move(of_sources.each_once);
    model.other_kinds = std::move(of_others.each_once);
}

} // namespace matchmark::model
