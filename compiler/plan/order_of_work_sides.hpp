// An order that has few changes of tool, gone through again so that the device is turned less.
#pragma once

#include "plan/order_of_work.hpp"

namespace matchmark::plan {

// The same acts with the same tools taken up one after the other; what is done with a tool in hand
// is done side by side. `faces`: for each task of the order; empty: any.
void group_by_side(const TaskGraph& graph, const Risks& risks,
                   const std::vector<std::string>& faces, WorkOrder& work);

} // namespace matchmark::plan
