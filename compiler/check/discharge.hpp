// The charges that a guide runs down, and what is known of each.
#pragma once

#include "check/walk.hpp"
#include "model/discharge.hpp"

#include <string>
#include <vector>

namespace matchmark::check {

struct Discharge {
    std::size_t event = 0;
    model::ItemId item;
    model::DischargeFacts facts;
};

// Every line of the author's whose verb `decays`, in the order of the work.
std::vector<Discharge> discharges(const Walk& walk);

// What is missing, in words: "its capacitance"; empty when the time can be worked out.
std::vector<std::string> missing(const model::DischargeFacts& facts);

} // namespace matchmark::check
