// Energy from charge, capacitance and voltage: textbook physics.
#include "model/stored_energy.hpp"

#include <cmath>

namespace matchmark::model {

namespace {

constexpr double joules_in_watt_hour = 3600.0;

double three_figures(double value) {
    if (value == 0)
        return 0;
    const double scale = std::pow(10.0, 2 - std::floor(std::log10(std::abs(value))));
    return std::round(value * scale) / scale;
}

} // namespace

std::optional<Quantity> described(const Item& item, Measure measure) {
    for (const SpecPhrase& phrase : item.spec) {
        for (const Quantity& quantity : phrase->quantities) {
            if (quantity.measure == measure)
                return quantity;
        }
    }
    return std::nullopt;
}

std::optional<double> stored_energy(const Item& item) {
    const auto voltage = described(item, Measure::voltage);
    if (!voltage)
        return std::nullopt;
    if (const auto charge = described(item, Measure::charge))
        return charge->base * voltage->base;
    if (const auto capacitance = described(item, Measure::capacitance))
        return capacitance->base * voltage->base * voltage->base / 2;
    return std::nullopt;
}

std::optional<Quantity> stored_energy_shown(const Item& item) {
    const auto energy = stored_energy(item);
    if (!energy)
        return std::nullopt;
    const bool cell = described(item, Measure::charge).has_value();
    return make_quantity(three_figures(cell ? *energy / joules_in_watt_hour : *energy),
                         cell ? "Wh" : "J");
}

double discharge_time(double resistance, double capacitance, double from_voltage,
                      double to_voltage) {
    if (to_voltage <= 0 || from_voltage <= to_voltage)
        return 0;
    return resistance * capacitance * std::log(from_voltage / to_voltage);
}

} // namespace matchmark::model
