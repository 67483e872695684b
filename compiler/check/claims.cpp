// Goes from what a test names to the obligations that it claims.
#include "check/claims.hpp"

#include <algorithm>

namespace matchmark::check {

using model::FunctionId;
using model::ItemId;

Claims::Claims(const model::Model& model, const std::vector<Proven>& all)
    : model_(model), of_item_(model.items.size()), of_function_(model.functions.size()),
      functions_through_(model.items.size()) {
    for (std::size_t i = 0; i < all.size(); ++i) {
        const Obligation& obligation = all[i].obligation;
        if (!obligation.function.known()) {
            renewed_.push_back(i);
            of_item_[obligation.item.value].push_back(i);
            continue;
        }
        of_function_[obligation.function.value] = i;
        for (const ItemId item : path_of(obligation.function))
            functions_through_[item.value].push_back(obligation.function);
    }
}

void Claims::add_item(ItemId item, std::vector<std::size_t>& claimed) const {
    const auto& more = of_item_[item.value];
    claimed.insert(claimed.end(), more.begin(), more.end());
}

void Claims::add_function(FunctionId function, std::vector<std::size_t>& claimed) const {
    if (const auto number = of_function_[function.value])
        claimed.push_back(*number);
}

std::vector<std::size_t> Claims::of(const model::Step& test) const {
    if (test.proves.empty())
        return renewed_;
    std::vector<std::size_t> claimed;
    std::vector<ItemId> named;
    for (const model::Proof& proof : test.proves) {
        if (!proof.function.known()) {
            add_item(proof.item, claimed);
            named.push_back(proof.item);
            continue;
        }
        add_function(proof.function, claimed);
        for (const ItemId item : path_of(proof.function))
            add_item(item, claimed);
    }
    std::sort(named.begin(), named.end());
    const auto is_named = [&](ItemId item) {
        return std::binary_search(named.begin(), named.end(), item);
    };
    for (const ItemId item : named) {
        for (const FunctionId function : functions_through_[item.value]) {
            const auto& path = path_of(function);
            if (std::all_of(path.begin(), path.end(), is_named))
                add_function(function, claimed);
        }
    }
    return claimed;
}

} // namespace matchmark::check
