// Where the way back is not the way in reversed: seals are laid before their covers, plugs are in
// before what they hold back, and supplies restored last.
#pragma once

#include "bench/bench.hpp"

#include <vector>

namespace matchmark::plan {

// From what a put-back starts: the state in which the take-apart leaves each variant of the device.
struct WayBackStart {
    std::vector<bench::State> states; // by variant
    const std::vector<model::Resource>& resources;
};

// Moves derived actions of a put-back: what is laid first goes before the part that it seals, where
// the bench allows that; a fluid goes in once its drain plug is; and a source of energy that was
// isolated half way in is restored when all else is back.
void put_in_working_order(const model::Model& model, const WayBackStart& start,
                          std::vector<model::Step>& steps);

} // namespace matchmark::plan
