// Where a source of energy is cut: from outside the device, or by the plug inside it.
#pragma once

#include "bench/bench.hpp"

namespace matchmark::bench {

// The source that makes work on this connector work under power: it feeds through the connector,
// can be cut from outside and has not been. The connector's own state is not asked, or what may
// not be parted could still be joined.
std::optional<StillLive> live_through(const Bench& bench, const State& state, ItemId connector);

// The source inside the device that feeds this item, or what carries it, through the connector and
// cannot be cut from outside; unknown when there is none. The charge of what it feeds cannot be let
// off before the connector is parted.
ItemId inner_source(const Bench& bench, ItemId connector, ItemId item);
// May one of the verbs that lead to these states be done under power?
bool safe_under_power(const model::Kind& kind, model::StateSet states);

} // namespace matchmark::bench
