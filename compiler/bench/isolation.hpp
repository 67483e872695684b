// Where a source of energy is cut: from outside the device, or by the plug inside it.
#pragma once

#include "bench/bench.hpp"

namespace matchmark::bench {

// Has the kind a verb, done from outside, that leads out of its live states?
bool cut_from_outside(const model::Kind& kind);

// The source that makes work on this connector work under power: it feeds through the connector,
// can be cut from outside and has not been. The connector's own state is not asked, or what may
// not be parted could still be joined.
std::optional<StillLive> live_through(const Bench& bench, const State& state, ItemId connector);

} // namespace matchmark::bench
