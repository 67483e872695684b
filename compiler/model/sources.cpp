// Tells each part what feeds it, and each connector what feeds through it.
#include "model/sources.hpp"

#include <algorithm>

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

// The joints on what the source feeds whose ends can be touched while they are made.
std::vector<ItemId> bare_ends_of(const Model& model, const Item& source) {
    std::vector<ItemId> ends;
    if (source.role != Role::energy || source.carrier.known())
        return ends;
    for (const ItemId fed : source.feeds) {
        for (const ItemId tie : model.item(fed).ties) {
            const bool known = std::find(ends.begin(), ends.end(), tie) != ends.end();
            if (!known && model.kind_of(tie).bare)
                ends.push_back(tie);
        }
    }
    return ends;
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
    for (const ItemId source : sources) {
        auto ends = bare_ends_of(model, items[source.value]);
        if (!ends.empty() || !items[source.value].bare_ends->empty())
            items[source.value].bare_ends = std::move(ends);
    }
    model.source_kinds = std::move(of_sources.each_once);
    model.other_kinds = std::move(of_others.each_once);
}

} // namespace matchmark::model
