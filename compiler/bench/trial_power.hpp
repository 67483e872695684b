// Under which sources a test is done, and what they lay open to the hand of whoever does it.
#pragma once

#include "bench/dangerous.hpp"

namespace matchmark::bench {

// The sources that feed any of the items: a part with what it is in, a connector with the parts
// that it joins. Only those that are live on the assembled device; in order of declaration.
std::vector<ItemId> sources_feeding(const Bench& bench, const std::vector<ItemId>& items);

// The sources that must be back before the test proves what it says: those that feed the parts it
// names and the paths of its functions, but for ratings and for ties whose kind asks for a test.
// Not one of which its `when` says where it stands, nor one on whose way it wants a connector
// parted. So must the pressure that what is tried closes in. `renewed`: what a test proves that
// names nothing.
std::vector<ItemId> test_sources(const Bench& bench, const model::Step& test,
                                 const std::vector<ItemId>& renewed);

// Is the source back, with every connector on its way? One that stays in a state that its kind may
// end in is.
bool is_restored(const Bench& bench, const State& state, ItemId source);
bool all_restored(const Bench& bench, const State& state, const std::vector<ItemId>& sources);

// The first danger that lies within reach while the test is done: a hazard on reach, not made safe,
// whose item, or what it feeds, cannot be reached on the assembled device, and now can, or is
// covered only by what nothing holds (`open_in_trial`). Nothing where the test's
// `when` says both where that item, or what charges it, stands and what else is not as assembled:
// then it is meant.
std::optional<Exposure> within_reach(const Bench& bench, const State& state,
                                     const model::Step& test, const Dangers& dangers);

// Does the test's `when` say so of this danger?
bool is_meant(const Bench& bench, const model::Step& test, ItemId danger);

} // namespace matchmark::bench
