// Numbers as a reader meets them: three figures, the unit that leaves the fewest zeros.
#pragma once

#include "model/quantity.hpp"

#include <initializer_list>
#include <string_view>

namespace matchmark::drive {

// To three figures.
double three_figures(double value);

// `value` in the first of the units, told in the last of them in which it is 1 or more. The units
// stand from small to large.
model::Quantity shown_in(double value, std::initializer_list<std::string_view> units);

} // namespace matchmark::drive
