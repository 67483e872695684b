// What stands below an action's sentence: an order of tightening, a time worked out, what to look
// at before something goes back.
#pragma once

#include "plan/reader/words.hpp"

namespace matchmark::plan {

// `going_back`: the action stands in the put-back, so that what it fits was off.
std::vector<guide::Words> details_of(const ReaderWords& words, const model::Action& action,
                                     bool going_back);

// What is measured and written down: "length of the brushes, at least 5 mm"; empty when nothing is.
std::string record_of(const ReaderWords& words, const model::Action& action);

} // namespace matchmark::plan
