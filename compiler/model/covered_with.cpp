// Hands the lines of a carrier on to the dangers that it carries.
#include "model/covered_with.hpp"

namespace matchmark::model {

void settle_covered_with(Model& model) {
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const Item& item = model.item(ItemId{i});
        const bool dangerous = !model.kind(item.kind).hazards.empty() &&
                               (item.role == Role::part || item.role == Role::energy);
        if (!dangerous || !item.reach.empty())
            continue;
        ItemId carrier = item.carrier;
        while (carrier.known() && model.item(carrier).reach.empty())
            carrier = model.item(carrier).carrier;
        if (carrier.known())
            model.items.edit(i).reach = model.item(carrier).reach;
    }
}

} // namespace matchmark::model
