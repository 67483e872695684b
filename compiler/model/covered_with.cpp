// Hands the lines of a carrier on to the dangers and the grease that it carries, and those of parts
// to the seals between them.
#include "model/covered_with.hpp"

#include <algorithm>

namespace matchmark::model {

namespace {

bool names_one_of(const ReachClause& clause, const std::vector<ItemId>& items) {
    return std::any_of(clause.ways.begin(), clause.ways.end(), [&](const auto& way) {
        return std::any_of(way.begin(), way.end(), [&](const ItemRef& ref) {
            return std::find(items.begin(), items.end(), ref.item) != items.end();
        });
    });
}

bool is_assumed(const Model& model, const ReachClause& clause) {
    return std::any_of(model.assumptions.begin(), model.assumptions.end(),
                       [&](const Assumption& assumed) { return assumed.line == clause.span; });
}

// Grease, a film of oil, paste: got at where they lie, and not through a plug or a port.
bool stays_where_laid(const Item& item, const Kind& kind) {
    return item.role == Role::fluid && !kind.runs_out && kind.hazards.empty();
}

void cover_with_carrier(Model& model, ItemId id) {
    ItemId carrier = model.item(id).carrier;
    while (carrier.known() && model.item(carrier).reach.empty())
        carrier = model.item(carrier).carrier;
    if (carrier.known())
        model.items.edit(id.value).reach = model.item(carrier).reach;
}

// What one of its parts keeps from the other lies on the seal's own way. What nobody has seen is
// not spread further.
void cover_with_parts(Model& model, ItemId id) {
    const std::vector<ItemId> parts = model.item(id).touches;
    for (std::size_t i = 0; i + 1 < parts.size(); ++i) {
        // A copy: the device may say, by mistake, that the seal lies at itself.
        const std::vector<ReachClause> lines = model.item(parts[i]).reach;
        for (const ReachClause& clause : lines) {
            if (!names_one_of(clause, parts) && !is_assumed(model, clause))
                model.items.edit(id.value).reach.push_back(clause);
        }
    }
}

} // namespace

void settle_covered_with(Model& model) {
    const auto untold = [&](std::uint32_t i) { return model.item(ItemId{i}).reach.empty(); };
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const Item& item = model.item(ItemId{i});
        const Kind& kind = model.kind(item.kind);
        const bool dangerous =
            !kind.hazards.empty() && (item.role == Role::part || item.role == Role::energy);
        if ((dangerous || stays_where_laid(item, kind)) && untold(i))
            cover_with_carrier(model, ItemId{i});
    }
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if (model.kind_of(ItemId{i}).laid_first && untold(i))
            cover_with_parts(model, ItemId{i});
    }
}

} // namespace matchmark::model
