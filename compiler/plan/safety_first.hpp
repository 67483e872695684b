// The order of work as a safe bench keeps it: what is made safe from outside comes first.
#pragma once

#include "plan/order_of_work.hpp"

namespace matchmark::plan {

// What is done from outside goes before all that is done by reaching in: first supplies are cut (a
// plug pulled, a lock hung), then what passes by itself is waited for (heat, what runs down or
// out), then the rest (a pressure let out, a supply proved dead). A supply that may be opened when
// it is off and not proved is proved once what it feeds lies open. `at_no_cost`: only if tools are
// then taken up no more often. Where the bench does not let it be, the order stays. The tool of
// each act stays its own, and so do the turnings: work from outside has no side.
void put_safety_first(const TaskGraph& graph, WorkOrder& work, bool at_no_cost);

} // namespace matchmark::plan
