// Asks the bench which sources are dead before an act, and live after it.
#include "check/supplies.hpp"

#include "bench/recharge.hpp"

#include <algorithm>

namespace matchmark::check {

model::ItemId switched_on(const Walk& walk, std::size_t at) {
    const auto dead =
        bench::dead_sources_of(walk.bench, walk.state_at(at), walk.events[at].act->item);
    if (dead.empty())
        return {};
    const bench::State& after = walk.state_at(at + 1);
    const auto live = std::find_if(dead.begin(), dead.end(), [&](model::ItemId source) {
        return bench::is_live(walk.bench, after, source);
    });
    return live == dead.end() ? model::ItemId{} : *live;
}

} // namespace matchmark::check
