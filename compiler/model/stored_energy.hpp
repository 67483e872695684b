// What a cell or a capacitor holds, and how long its charge takes to run down.
#pragma once

#include "model/item.hpp"

#include <optional>

namespace matchmark::model {

// The first number in the item's description that measures this.
std::optional<Quantity> described(const Item& item, Measure measure);

// In J, of one piece: charge x voltage of a cell, half of capacitance x voltage squared of a
// capacitor. Nothing unless the description gives both numbers.
std::optional<double> stored_energy(const Item& item);

// "11.6 Wh" of what has a charge, "37.6 J" of what has a capacitance, to three figures.
std::optional<Quantity> stored_energy_shown(const Item& item);

// t = R C ln(V0 / V), in s; 0 when the voltage is not above the limit. Arguments in ohm, F and V.
double discharge_time(double resistance, double capacitance, double from_voltage,
                      double to_voltage);

} // namespace matchmark::model
