// What stands in a part: the fluids that go where it goes.
#include "bench/contents.hpp"

#include <algorithm>

namespace matchmark::bench {

using model::Role;

std::vector<ItemId> fluids_in(const Bench& bench, ItemId part) {
    std::vector<ItemId> parts{part};
    std::vector<ItemId> fluids;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        for (const ItemId carried : bench.model->item(parts[i]).carried) {
            if (!bench.exists(carried))
                continue;
            const bool fluid = bench.model->item(carried).role == Role::fluid;
            (fluid ? fluids : parts).push_back(carried);
        }
    }
    std::sort(fluids.begin(), fluids.end(), [](ItemId a, ItemId b) { return a.value < b.value; });
    return fluids;
}

bool is_filled(const Bench& bench, const State& state, ItemId fluid) {
    return model::contains(bench.model->kind_of(fluid).present,
                           state_of(bench, state, fluid, 0, 0));
}

} // namespace matchmark::bench
