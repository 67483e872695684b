// Units: what one is in another.
#include "model/quantity.hpp"
#include "published/subjects.hpp"

#include <array>
#include <fmt/core.h>

namespace matchmark::published {

namespace {

constexpr Origin inch_pound{"NIST SP 811 (2008), appendix B.8", Reading::memory};
constexpr Origin by_brochure{"SI Brochure, 9th edition, tables 3, 4, 7 and 8", Reading::memory};

struct Factor {
    double value;
    std::string_view unit;
    double published;
    std::string_view in;
};

// SP 811 prints seven figures; those that are exact agree to all.
constexpr auto inch_pound_factors = std::to_array<Factor>({{1, "in", 25.4, "mm"},
                                                           {1, "ft", 0.3048, "m"},
                                                           {1, "lb", 0.4535924, "kg"},
                                                           {1, "oz", 28.34952, "g"},
                                                           {1, "lbf", 4.448222, "N"},
                                                           {1, "kgf", 9.80665, "N"},
                                                           {1, "kgf.m", 9.80665, "N.m"},
                                                           {1, "psi", 6894.757, "Pa"},
                                                           {1, "bar", 1e5, "Pa"},
                                                           {1, "mbar", 100, "Pa"},
                                                           {1, "kWh", 3.6e6, "J"},
                                                           {1, "Wh", 3600, "J"},
                                                           {32, "degF", 273.15, "K"},
                                                           {212, "degF", 100, "degC"}});
constexpr auto torque_factors = std::to_array<Factor>({{1, "lbf.in", 0.112985, "N.m"},
                                                       {1, "lbf.ft", 1.355818, "N.m"},
                                                       {1, "kgf.cm", 0.0980665, "N.m"}});
constexpr auto si_factors = std::to_array<Factor>(
    {{1, "min", 60, "s"},      {1, "h", 3600, "s"},      {1, "d", 86400, "s"},
     {1, "l", 1e-3, "m3"},     {1, "ml", 1, "cm3"},      {1, "t", 1000, "kg"},
     {0, "degC", 273.15, "K"}, {1, "um", 1e-6, "m"},     {1, "mm2", 1e-6, "m2"},
     {1, "kN", 1000, "N"},     {1, "cN.m", 0.01, "N.m"}, {1, "MPa", 1e6, "Pa"},
     {1, "mAh", 3.6, "C"},     {1, "uF", 1e-6, "F"},     {1, "nF", 1e-9, "F"},
     {1, "pF", 1e-12, "F"},    {1, "kohm", 1000, "ohm"}, {1, "Mohm", 1e6, "ohm"},
     {1, "mA", 1e-3, "A"},     {1, "kV", 1000, "V"},     {60, "r/min", 1, "Hz"}});

void add_unit(Table& table, const Origin& origin, const auto& factors, Allowed allowed) {
    for (const Factor& one : factors) {
        const auto written = model::make_quantity(one.value, one.unit);
        const auto shown = written ? model::convert(*written, one.in) : std::nullopt;
        expect(table, origin, fmt::format("{} {} in {}", one.value, one.unit, one.in),
               one.published, shown ? std::optional(shown->value) : std::nullopt, allowed);
    }
}

} // namespace

void add_units(Table& table) {
    constexpr double seventh_figure = 2e-5;
    add_unit(table, inch_pound, inch_pound_factors, percent(seventh_figure));
    add_unit(table, inch_pound, torque_factors, percent(5e-4));
    add_unit(table, by_brochure, si_factors, exactly);
}

} // namespace matchmark::published
