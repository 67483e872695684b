// The parts of the program `plans`: each prints its rows and says whether all is well.
#pragma once

#include "drive/compilation.hpp"
#include "support/random_model.hpp"

#include <string>
#include <vector>

namespace matchmark::plans {

using namespace random_model;

// The least way in, against clasp: on random devices, and for every part of every sample.
bool least_ways();
bool least_ways_of_samples();
// The fewest changes of tool, against clasp.
bool fewest_changes();
// In how many orders work can be done, against published counts.
bool counted_orders();
// What a relation less would save, against planning anew; the same with any number of threads.
bool what_if_holds();
// A second job on the open device, against a search through all states.
bool jobs_in_turn_hold();
// The least way in, against z3.
bool second_opinions();
// How long a large device takes, beside gringo and clasp. Judges the answers alone.
bool speed();
// Every part of every sample: the drafted guide checks clean and is a fixed point of `tidy`.
bool drafts();

// The devices of samples/, each with its file's path.
struct Sample {
    std::string path;
    drive::Compilation done;
};
const std::vector<Sample>& samples();

} // namespace matchmark::plans
