// The charges that a guide runs down, and what is known of each: resistor, capacitance, voltage.
#pragma once

#include "check/walk.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::check {

struct Discharge {
    std::size_t event = 0;
    model::ItemId item;
    std::optional<model::Quantity> through;     // a resistance
    std::optional<model::Quantity> capacitance; // of one piece
    std::optional<model::Quantity> voltage;     // before it
    std::optional<model::Quantity> limit;       // after it
};

// Every line of the author's whose verb `decays`, in the order of the work. The limit is the
// line's, its verb's, or that of the verb which comes after it.
std::vector<Discharge> discharges(const Walk& walk);

// What is missing, in words: "its capacitance"; empty when the time can be worked out.
std::vector<std::string> missing(const Discharge& discharge);

// In s; nothing when something is missing.
std::optional<double> time_for(const Discharge& discharge);

} // namespace matchmark::check
