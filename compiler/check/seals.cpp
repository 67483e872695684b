// Asks where the parts are that a seal lies between.
#include "check/seals.hpp"

#include <algorithm>

namespace matchmark::check {

bool is_together(const Walk& walk, const bench::State& state, model::ItemId seal) {
    const auto& parts = walk.model.item(seal).touches;
    if (parts.empty())
        return false;
    const model::ItemId base = bench::body(walk.bench, state, parts.back());
    return std::all_of(parts.begin(), parts.end(), [&](model::ItemId part) {
        if (!walk.bench.exists(part))
            return true;
        return model::is_tie(walk.model.item(part).role)
                   ? bench::binds(walk.bench, state, part)
                   : bench::body(walk.bench, state, part) == base;
    });
}

} // namespace matchmark::check
