// What a test that runs the device does to it: what was cooled is hot, what was stopped has turned,
// what a cell inside feeds is charged.
#pragma once

#include "bench/bench.hpp"

namespace matchmark::bench {

// The parts that the test proves, and the paths of its functions: not what is only measured, as a
// rating or a joint is. `renewed`: what a test proves that names nothing.
std::vector<ItemId> tried_by(const Bench& bench, const model::Step& test,
                             const std::vector<ItemId>& renewed);

// The items that the test may make dangerous again, whatever the device stands like.
std::vector<ItemId> brought_back_by(const Bench& bench, const model::Step& test,
                                    const std::vector<ItemId>& renewed);

// The sources of which one has to be live for the test to run the device; empty: it needs none.
std::vector<ItemId> set_going_by(const Bench& bench, const model::Step& test,
                                 const std::vector<ItemId>& renewed);

// Runs the device for the test, if it can be run as it stands; with the sources alone, only what
// they charge at once is dangerous again, and not what gets hot by and by.
enum class Running : unsigned char { wholly, sources_alone };
void run(const Bench& bench, State& state, const model::Step& test,
         const std::vector<ItemId>& renewed, Running how = Running::wholly);

// May the source set the item going, whatever the device stands like: a supply, or a cell inside?
bool may_power(const Bench& bench, ItemId source, ItemId item);

// Is a verb of the one work on the other, or on what it is in, as far as hazards on touch go?
bool is_work_on(const Bench& bench, ItemId acted, const model::Verb& verb, ItemId danger);

// Those of the items that hurt who touches them, and not only when they lie open.
std::vector<ItemId> hurt_on_touch(const Bench& bench, std::vector<ItemId> items);

// Does the test itself say where the item stands?
bool says_where(const model::Step& test, ItemId item);

} // namespace matchmark::bench
