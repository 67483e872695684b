// The parts of the program `plans`: each prints its rows and says whether all is well.
#pragma once

#include "drive/compilation.hpp"

#include <string>
#include <vector>

namespace matchmark::plans {

// The least way in, against clasp: on random devices and for every item of every sample.
bool least_ways();
// The fewest changes of tool, against clasp.
bool fewest_changes();
// In how many orders work can be done, against published counts.
bool counted_orders();
// Every part of every sample: the drafted guide checks clean and is a fixed point of `tidy`.
bool drafts();

// The devices of samples/, each with its file's path.
struct Sample {
    std::string path;
    drive::Compilation done;
};
const std::vector<Sample>& samples();

} // namespace matchmark::plans
