// How long a charge is run down before it is taken as gone, from what guide and device say of it.
#pragma once

#include "model/model.hpp"

#include <optional>

namespace matchmark::model {

// Each is empty when it is not stated.
struct DischargeFacts {
    std::optional<Quantity> through;     // a resistance: the action's
    std::optional<Quantity> capacitance; // of one piece
    std::optional<Quantity> voltage;     // before it
    std::optional<Quantity> limit;       // after it: the action's, its verb's, or that of the next
};

// Of an action whose verb `decays`, and one of its targets.
DischargeFacts discharge_facts(const Model& model, const Action& action, const Target& target);

// In s; nothing when a fact is missing.
std::optional<double> discharge_time(const DischargeFacts& facts);

// In s, rounded up to two figures, as a page and a finding tell it: it must be enough. 0 when the
// time is.
double told_time(double seconds);

} // namespace matchmark::model
