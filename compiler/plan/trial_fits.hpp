// How well tests fit at each point of a procedure.
#pragma once

#include "bench/work.hpp"

#include <vector>

namespace matchmark::plan {

// What a point is good for: the test can be done there, with or without something hiding what it
// proves; hidden, with the plugs of what was renewed in or not.
enum class Fit : unsigned char { no, hidden, plugged, open };

// From this point on, until the next entry. A point is a number of actions done.
struct FitFrom {
    std::size_t point = 0;
    Fit fit = Fit::no;
};
using Fits = std::vector<FitFrom>; // by point; the last holds to the end

struct TrialFits {
    Fits dead;    // of ratings and earths: where all supplies are still off
    Fits powered; // where the sources of what it proves are back, and no danger lies within reach
    Fits anyhow;
};

// Of each test in one variant, from the put-back's first point on. The steps hold no tests yet.
std::vector<TrialFits> trial_fits(const bench::Bench& bench, const bench::Resources& resources,
                                  const std::vector<model::Step>& steps,
                                  const std::vector<const model::Step*>& tests);

// The number of actions before the put-back, which stands last.
std::size_t actions_before_put_back(const std::vector<model::Step>& steps);

} // namespace matchmark::plan
