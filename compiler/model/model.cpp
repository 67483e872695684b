// What carries what, and the variants of a device, counted and named.
#include "model/model.hpp"

#include <algorithm>

namespace matchmark::model {

bool is_in(const Model& model, ItemId item, ItemId carrier) {
    while (item.known() && item != carrier)
        item = model.item(item).carrier;
    return item == carrier;
}

std::size_t variant_count(const Model& model) {
    return std::max<std::size_t>(1, model.device.variants.size());
}

std::vector<std::string> variant_names(const Model& model, VariantMask mask) {
    std::vector<std::string> names;
    const auto& variants = model.device.variants;
    for (std::size_t i = 0; i < variants.size(); ++i) {
        if (((mask >> i) & 1U) != 0)
            names.push_back(variants[i]);
    }
    if (names.size() == variants.size())
        names.clear();
    return names;
}

} // namespace matchmark::model
