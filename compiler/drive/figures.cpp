// Rounds, and chooses among units.
#include "drive/figures.hpp"

#include <cmath>

namespace matchmark::drive {

double three_figures(double value) {
    if (value == 0 || !std::isfinite(value))
        return value;
    const int places = 2 - static_cast<int>(std::floor(std::log10(std::abs(value))));
    // Divided by a whole power of ten, so that 0.074 comes out as it is written.
    const double scale = std::pow(10.0, std::abs(places));
    return places >= 0 ? std::round(value * scale) / scale : std::round(value / scale) * scale;
}

model::Quantity shown_in(double value, std::initializer_list<std::string_view> units) {
    const model::Quantity exact =
        model::make_quantity(value, *units.begin()).value_or(model::Quantity{});
    model::Quantity shown = exact;
    for (const std::string_view unit : units) {
        const auto other = model::convert(exact, unit);
        if (other && std::abs(three_figures(other->value)) >= 1)
            shown = *other;
    }
    return model::make_quantity(three_figures(shown.value), shown.unit).value_or(shown);
}

} // namespace matchmark::drive
