// 4 of docs/semantics.md: whose power an act would be done under.
#pragma once

#include "bench/attempt.hpp"

namespace matchmark::bench {

// The live source that makes the act work under power, and the part by which it does.
std::optional<StillLive> still_live(const Attempt& at);

// Would the act be work under this source's power if the source were on? Its own plugs isolate, and
// with one of them apart nothing comes through. A part that is taken out or put in counts without
// what it is in: behind the lid of a motor its supply is proved dead.
bool would_be_live(const Bench& bench, const State& state, const Act& act, ItemId source);

} // namespace matchmark::bench
