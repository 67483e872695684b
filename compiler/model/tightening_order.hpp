// In which order the members of a group are tightened, and how far in each pass.
#pragma once

#include "model/item.hpp"

#include <cstdint>
#include <string_view>
#include <vector>

namespace matchmark::model {

// Is there an order of this name: star, spiral?
bool is_pattern(std::string_view pattern);
// The names that there are, for "did you mean".
std::vector<std::string> pattern_names();

// Members from 1 in the order of tightening. `star`: across and across again, as ASME PCC-1 numbers
// the bolts of a flange; `spiral`: from the middle outwards. Without places the members are taken
// to stand round a circle in the order of their numbers. Empty when there is no such pattern.
std::vector<std::uint16_t> tightening_order(std::string_view pattern,
                                            const std::vector<Point>& places, std::uint16_t count);

// The part of the torque that each pass goes to; the last is 1. Three passes are 30 %, 65 % and
// 100 %, within the ranges of ASME PCC-1.
std::vector<double> pass_parts(int passes);

} // namespace matchmark::model
