// Which assumed lines of a device a way in rests on, and which look at the device would settle
// most.
#pragma once

#include "plan/way_in/way_in.hpp"

#include <optional>
#include <vector>

namespace matchmark::plan {

// An answer rests on a line when the line is a reason for one of its acts, or when without the line
// the least way in is another one.
struct Reliance {
    model::Assumption line;
    bool is_reason = false;
    std::optional<double> seconds_without; // of the least way in; none: not known
};

// To look at one item: what is in its way, what ties it down, and so on.
struct Look {
    model::ItemId item;
    std::size_t lines = 0;                 // assumed lines on it, all settled by it
    std::size_t relied_on = 0;             // of these, those that the answer rests on
    std::optional<double> seconds_without; // if none of its lines is so
};

struct Assumed {
    std::vector<Reliance> rests_on; // in order of declaration
    std::optional<Look> look;       // none when nothing is assumed
};

// `way` is the answer for `goal`. Lines are tried one by one, each by a new search; of more than
// `most_tried` lines only the reasons are told.
inline constexpr std::size_t most_tried = 400;
Assumed assumed_by(const bench::Bench& bench, const WayInGoal& goal, const WayIn& way);

// The device without these lines.
model::Model without(const model::Model& model, const std::vector<model::Assumption>& lines);

} // namespace matchmark::plan
