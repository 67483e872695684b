// How long handling takes, as a published method or a shop's own watch has it.
#pragma once

#include "model/quantity.hpp"
#include "source/text.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::model {

// What one verb takes on one kind, for each member, in place of the verb's own `takes`.
struct TimedVerb {
    std::string verb;
    std::vector<std::string> kinds;
    std::optional<Quantity> takes;
    Span span;
};

// The tasks around an act. What is not given takes no time.
struct Timing {
    std::string name;
    std::string title;
    std::optional<Quantity> tool_change; // for each tool taken up
    std::optional<Quantity> identify;    // for each act
    std::optional<Quantity> handle;      // for each act
    std::optional<Quantity> position;    // for each member, where a tool is set on it
    std::optional<Quantity> set_aside;   // for each member that comes off
    std::optional<Quantity> turn;        // for each turning of the device
    std::vector<TimedVerb> verbs;
    bool usual = false; // taken unless another is named; the last one declared so
    Span span;
};

} // namespace matchmark::model
