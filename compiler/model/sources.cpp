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

bool is_named_in(const std::vector<ReachClause>& reach, ItemId item) {
    return std::any_of(reach.begin(), reach.end(), [&](const ReachClause& clause) {
        return std::any_of(clause.ways.begin(), clause.ways.end(), [&](const auto& way) {
            return std::any_of(way.begin(), way.end(),
                               [&](const ItemRef& ref) { return ref.item == item; });
        });
    });
}

// Are the bare ends on what is fed got at without moving it, as behind the lid of a motor?
bool has_ends_of_its_own(const Model& model, const Item& source, ItemId fed) {
    const auto is_driven = [&](const std::vector<ItemId>& driven) {
        return std::find(driven.begin(), driven.end(), fed) != driven.end();
    };
    bool found = false;
    for (const ItemId tie : model.item(fed).ties) {
        if (!model.kind_of(tie).bare)
            continue;
        found = true;
        if (is_named_in(model.item(tie).reach, fed))
            return false;
    }
    return found && !is_driven(source.feeding->drives);
}

// A driven part counts: its supply is also proved by a try of what it drives.
std::vector<ItemId> terminals_of(const Model& model, const Item& source) {
    const auto& verbs = model.kind(source.kind).verbs;
    const bool by_hand = std::any_of(verbs.begin(), verbs.end(),
                                     [](const Verb& verb) { return !verb.from_outside; });
    if (source.role != Role::energy || source.carrier.known() || !source.reach.empty() || !by_hand)
        return {};
    std::vector<ItemId> found;
    for (const ItemId fed : source.feeds) {
        if (!has_ends_of_its_own(model, source, fed))
            found.push_back(fed);
    }
    const auto add_all = [&](const std::vector<ItemId>& more) {
        found.insert(found.end(), more.begin(), more.end());
    };
    add_all(source.feeding->bare_ends);
    add_all(source.through);
    for (const FedThrough& line : source.feeding->lines_through)
        add_all(line.connectors);
    return found;
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
            add_once(items[fed.value].fed_by.edit(), ItemId{i});
        if (item.feeds.empty())
            continue; // what only passes on is cut with what feeds it
        for (const ItemId connector : item.through)
            add_once(items[connector.value].carries_from.edit(), ItemId{i});
        for (const FedThrough& line : item.feeding->lines_through) {
            for (const ItemId connector : line.connectors)
                add_once(items[connector.value].carries_from.edit(), ItemId{i});
        }
    }
    for (const ItemId source : sources) {
        auto ends = bare_ends_of(model, items[source.value]);
        if (!ends.empty() || !items[source.value].feeding->bare_ends.empty())
            items[source.value].feeding.edit().bare_ends = std::move(ends);
        auto terminals = terminals_of(model, items[source.value]);
        if (!terminals.empty() || !items[source.value].feeding->terminals.empty())
            items[source.value].feeding.edit().terminals = std::move(terminals);
    }
    model.source_kinds = std::move(of_sources.each_once);
    model.other_kinds = std::move(of_others.each_once);
}

} // namespace matchmark::model
