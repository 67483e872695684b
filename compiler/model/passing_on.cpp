// Lets what a supply feeds reach beyond the parts that only pass it on.
#include "model/passing_on.hpp"

#include "model/sources.hpp"

#include <algorithm>

namespace matchmark::model {

namespace {

bool is_always_beside(const Item& item, const Item& other) {
    return (other.variants & ~item.variants) == 0;
}

// May it pass on at all? What it feeds would be fed where it is missing, too.
bool may_pass_on(const Model& model, const Item& item) {
    return item.role == Role::part && model.kind(item.kind).passes_on &&
           std::all_of(item.feeds.begin(), item.feeds.end(),
                       [&](ItemId fed) { return is_always_beside(item, model.item(fed)); });
}

// The parts that may pass on, and which of them a source feeds wherever they are.
struct Passing {
    std::vector<bool> may;    // for each item
    std::vector<bool> is_fed; // likewise
};

// The parts that pass on what comes to the item: itself, and what goes with it.
std::vector<ItemId> passing_in(const Model& model, ItemId item, const Passing& passing,
                               std::vector<bool>& met) {
    std::vector<ItemId> parts;
    std::vector<ItemId> open{item};
    while (!open.empty()) {
        const ItemId at = open.back();
        open.pop_back();
        if (met[at.value])
            continue;
        met[at.value] = true;
        if (passing.may[at.value])
            parts.push_back(at);
        const auto& carried = model.item(at).carried;
        open.insert(open.end(), carried.rbegin(), carried.rend());
    }
    return parts;
}

// What the source feeds beyond what is named, in the order in which it comes there.
std::vector<ItemId> beyond(const Model& model, ItemId source, Passing& passing) {
    std::vector<bool> met(model.items.size());
    std::vector<bool> is_reached(model.items.size());
    std::vector<ItemId> reached = model.item(source).feeds;
    const std::size_t named = reached.size();
    is_reached[source.value] = true;
    for (const ItemId fed : reached)
        is_reached[fed.value] = true;
    for (std::size_t i = 0; i < reached.size(); ++i) {
        for (const ItemId part : passing_in(model, reached[i], passing, met)) {
            if (is_always_beside(model.item(source), model.item(part)))
                passing.is_fed[part.value] = true;
            for (const ItemId fed : model.item(part).feeds) {
                if (!is_reached[fed.value])
                    reached.push_back(fed);
                is_reached[fed.value] = true;
            }
        }
    }
    return {reached.begin() + static_cast<std::ptrdiff_t>(named), reached.end()};
}

} // namespace

void settle_passing_on(Model& model) {
    Passing passing{std::vector<bool>(model.items.size()), std::vector<bool>(model.items.size())};
    bool any = false;
    for (const ItemId id : model.sources) {
        passing.may[id.value] = may_pass_on(model, model.item(id));
        any = any || passing.may[id.value];
    }
    if (!any)
        return;
    for (const ItemId id : model.sources) {
        if (passing.may[id.value])
            continue;
        const std::vector<ItemId> more = beyond(model, id, passing);
        Item& source = model.items.edit(id.value);
        source.feeds.insert(source.feeds.end(), more.begin(), more.end());
        source.feeds_beyond = more;
    }
    for (const ItemId id : model.sources) {
        if (passing.is_fed[id.value]) {
            Item& part = model.items.edit(id.value);
            part.passes_to.swap(part.feeds);
        }
    }
    settle_sources(model);
}

std::vector<ItemId> fed_directly(const Item& source) {
    if (!source.passes_to.empty())
        return source.passes_to;
    return {source.feeds.begin(),
            source.feeds.end() - std::ssize(source.feeds_beyond) - std::ssize(source.drives)};
}

} // namespace matchmark::model
