// The way back: the take-apart reversed, with the author's own words and steps put in.
#pragma once

#include "bench/work.hpp"

#include <string>
#include <vector>

namespace matchmark::plan {

// What an author wrote for the way back: a step named after the one it reverses, a new step, or a
// test.
struct WrittenBack {
    model::Step step;
    std::string reverses; // name of the opening step in the procedure; empty: a step of its own
    std::string after;    // name of the put-back step that it follows; empty: see `first`
    bool first = false;   // stands before everything derived
};

// Steps of section put_back, in order. `opening` are the procedure's steps so far.
std::vector<model::Step> derive_put_back(const model::Model& model,
                                         const std::vector<model::Resource>& resources,
                                         const std::vector<model::Step>& opening,
                                         const std::vector<WrittenBack>& written);

} // namespace matchmark::plan
