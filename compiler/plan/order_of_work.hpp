// In what order a set of acts is done: each when the bench allows it, with the fewest changes of
// tool, and among those orders with the fewest turnings of the device.
#pragma once

#include "plan/way_in/search.hpp"

namespace matchmark::plan {

struct WorkOrder {
    std::vector<TaskIndex> order;
    std::vector<std::string> tools;    // for each act; empty: by hand
    std::size_t changes = 0;           // times that a tool is taken up, the first one counted
    std::size_t at_least = 0;          // no order has fewer; equal to `changes` when that is proved
    std::size_t turnings = 0;          // the first side up not counted
    std::size_t turnings_at_least = 0; // no order with `at_least` changes of tool has fewer
};

// `tasks`, each of which is done, in the order that reads best: it decides among equals. Empty when
// they cannot all be done. `most_stages`: after so many the order is a good one, and the bounds say
// how good.
WorkOrder order_of_work(const TaskGraph& graph, const Risks& risks,
                        const std::vector<TaskIndex>& tasks, std::size_t most_stages = 20000);

// In how many orders the acts can be done, exactly, in decimal digits; empty when more than
// `most_states` stages of the work would have to be looked at.
std::string count_orders(const TaskGraph& graph, const std::vector<TaskIndex>& tasks,
                         std::size_t most_states = 300000);

} // namespace matchmark::plan
