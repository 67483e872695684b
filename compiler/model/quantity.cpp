// Numbers with units: the table of units, and the arithmetic that keeps decimal numbers decimal.
#include "model/quantity.hpp"

#include "source/replace_all.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace matchmark::model {
namespace {

// base = value * factor + offset.
struct UnitEntry {
    std::string_view spelling;
    Measure measure;
    double factor;
    double offset = 0;
};

// Factors to SI units: SI Brochure, 9th edition, tables 3, 4, 7 and 8. Inch, foot, pound, ounce,
// pound-force and what is made from them: exact definitions of NIST SP 811, B.8 (inch 0.0254 m,
// pound 0.453 592 37 kg, standard gravity 9.806 65 m/s2).
constexpr double pound = 0.45359237;
constexpr double gravity = 9.80665;
constexpr double inch = 0.0254;
constexpr double pound_force = pound * gravity;

constexpr auto units = std::to_array<UnitEntry>({
    {"um", Measure::length, 1e-6},
    {"mm", Measure::length, 1e-3},
    {"cm", Measure::length, 1e-2},
    {"m", Measure::length, 1},
    {"in", Measure::length, inch},
    {"ft", Measure::length, 12 * inch},
    {"mm2", Measure::area, 1e-6},
    {"cm2", Measure::area, 1e-4},
    {"m2", Measure::area, 1},
    {"mm3", Measure::volume, 1e-9},
    {"cm3", Measure::volume, 1e-6},
    {"ml", Measure::volume, 1e-6},
    {"cl", Measure::volume, 1e-5},
    {"dl", Measure::volume, 1e-4},
    {"l", Measure::volume, 1e-3},
    {"m3", Measure::volume, 1},
    {"mg", Measure::mass, 1e-6},
    {"g", Measure::mass, 1e-3},
    {"kg", Measure::mass, 1},
    {"t", Measure::mass, 1e3},
    {"oz", Measure::mass, pound / 16},
    {"lb", Measure::mass, pound},
    {"ms", Measure::time, 1e-3},
    {"s", Measure::time, 1},
    {"min", Measure::time, 60},
    {"h", Measure::time, 3600},
    {"d", Measure::time, 86400},
    {"K", Measure::temperature, 1},
    {"degC", Measure::temperature, 1, 273.15},
    {"°C", Measure::temperature, 1, 273.15},
    {"degF", Measure::temperature, 1 / 1.8, 459.67 / 1.8},
    {"deg", Measure::angle, 1}, // the degree itself is the base: it stays exact
    {"°", Measure::angle, 1},
    {"mN", Measure::force, 1e-3},
    {"N", Measure::force, 1},
    {"kN", Measure::force, 1e3},
    {"lbf", Measure::force, pound_force},
    {"kgf", Measure::force, gravity},
    {"mN.m", Measure::torque, 1e-3},
    {"N.cm", Measure::torque, 1e-2},
    {"cN.m", Measure::torque, 1e-2},
    {"N.m", Measure::torque, 1},
    {"kN.m", Measure::torque, 1e3},
    {"lbf.in", Measure::torque, pound_force* inch},
    {"lbf.ft", Measure::torque, pound_force * 12 * inch},
    {"kgf.cm", Measure::torque, gravity * 1e-2},
    {"kgf.m", Measure::torque, gravity},
    {"Pa", Measure::pressure, 1},
    {"mbar", Measure::pressure, 1e2},
    {"kPa", Measure::pressure, 1e3},
    {"bar", Measure::pressure, 1e5},
    {"MPa", Measure::pressure, 1e6},
    {"psi", Measure::pressure, pound_force / (inch * inch)},
    {"J", Measure::energy, 1},
    {"kJ", Measure::energy, 1e3},
    {"Wh", Measure::energy, 3600},
    {"kWh", Measure::energy, 3.6e6},
    {"mW", Measure::power, 1e-3},
    {"W", Measure::power, 1},
    {"kW", Measure::power, 1e3},
    {"mV", Measure::voltage, 1e-3},
    {"V", Measure::voltage, 1},
    {"kV", Measure::voltage, 1e3},
    {"mA", Measure::current, 1e-3},
    {"A", Measure::current, 1},
    {"C", Measure::charge, 1},
    {"mAh", Measure::charge, 3.6},
    {"Ah", Measure::charge, 3600},
    {"ohm", Measure::resistance, 1},
    {"kohm", Measure::resistance, 1e3},
    {"Mohm", Measure::resistance, 1e6},
    {"Ω", Measure::resistance, 1},
    {"kΩ", Measure::resistance, 1e3},
    {"MΩ", Measure::resistance, 1e6},
    {"pF", Measure::capacitance, 1e-12},
    {"nF", Measure::capacitance, 1e-9},
    {"uF", Measure::capacitance, 1e-6},
    {"µF", Measure::capacitance, 1e-6},
    {"mF", Measure::capacitance, 1e-3},
    {"F", Measure::capacitance, 1},
    {"Hz", Measure::frequency, 1},
    {"kHz", Measure::frequency, 1e3},
    {"MHz", Measure::frequency, 1e6},
    {"r/min", Measure::frequency, 1.0 / 60},
    {"rpm", Measure::frequency, 1.0 / 60},
    {"%", Measure::ratio, 1e-2},
});

// One spelling for characters that look alike or say the same: the middle dots, the two micro and
// ohm signs.
std::string folded(std::string_view unit) {
    std::string text(unit);
    replace_all(text, "·", ".");      // U+00B7
    replace_all(text, "\u22C5", "."); // dot operator
    replace_all(text, "\u03BC", "u"); // Greek mu
    replace_all(text, "\u00B5", "u"); // micro sign
    replace_all(text, "\u03A9", "ohm");
    replace_all(text, "\u2126", "ohm");
    return text;
}

const UnitEntry* find_unit(std::string_view spelling) {
    const std::string text = folded(spelling);
    const auto* found = std::find_if(units.begin(), units.end(),
                                     [&](const UnitEntry& unit) { return unit.spelling == text; });
    return found == units.end() ? nullptr : found;
}

// ISO 4217 gives every currency three capital letters; which of them exist today is not asked.
bool is_currency(std::string_view unit) {
    return unit.size() == 3 &&
           std::all_of(unit.begin(), unit.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
}

// `value` without the last binary noise: 15 significant decimal digits of `magnitude` are kept,
// which every double holds. So 0.1 + 0.2 is 0.3, 0.3 - 0.1 - 0.2 is 0, and 25.4 mm equals 1 in.
double decimal(double value, double magnitude) {
    if (!std::isfinite(value) || !(magnitude > 0) || !std::isfinite(magnitude)) {
        return value;
    }
    const int decimals = 14 - static_cast<int>(std::floor(std::log10(magnitude)));
    if (decimals < 0) {
        return value;
    }
    std::array<char, 1200> buffer{};
    const auto written = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                       std::chars_format::fixed, decimals);
    if (written.ec != std::errc{}) {
        return value;
    }
    double rounded = value;
    std::from_chars(buffer.data(), written.ptr, rounded);
    return rounded == 0 ? 0 : rounded; // no minus zero
}

double decimal(double value) { return decimal(value, std::abs(value)); }

double scale(const Quantity& quantity) {
    const UnitEntry* unit = find_unit(quantity.unit);
    return unit == nullptr ? 1 : unit->factor;
}

} // namespace

Unit::Unit(std::string_view spelling) { spelling.copy(bytes_.data(), most); }

Unit::operator std::string_view() const {
    const auto* end = std::find(bytes_.begin(), bytes_.end(), '\0');
    return {bytes_.data(), static_cast<std::size_t>(end - bytes_.begin())};
}

std::optional<Quantity> make_quantity(double value, std::string_view unit) {
    if (unit.empty()) {
        return Quantity{value, {}, Measure::number, value};
    }
    if (const UnitEntry* known = find_unit(unit)) {
        const double base = decimal(value * known->factor + known->offset);
        return Quantity{value, unit, known->measure, base};
    }
    if (is_currency(unit)) {
        return Quantity{value, unit, Measure::money, value};
    }
    return std::nullopt;
}

std::string_view describe(Measure measure) {
    switch (measure) {
    case Measure::number:
        return "a number";
    case Measure::length:
        return "a length";
    case Measure::area:
        return "an area";
    case Measure::volume:
        return "a volume";
    case Measure::mass:
        return "a mass";
    case Measure::time:
        return "a time";
    case Measure::temperature:
        return "a temperature";
    case Measure::angle:
        return "an angle";
    case Measure::force:
        return "a force";
    case Measure::torque:
        return "a torque";
    case Measure::pressure:
        return "a pressure";
    case Measure::energy:
        return "an energy";
    case Measure::power:
        return "a power";
    case Measure::voltage:
        return "a voltage";
    case Measure::current:
        return "a current";
    case Measure::charge:
        return "an electric charge";
    case Measure::resistance:
        return "a resistance";
    case Measure::capacitance:
        return "a capacitance";
    case Measure::frequency:
        return "a frequency";
    case Measure::ratio:
        return "a ratio";
    case Measure::money:
        return "an amount of money";
    }
    return "a number";
}

const std::vector<std::string>& unit_spellings() {
    static const std::vector<std::string> spellings = [] {
        std::vector<std::string> all;
        for (const UnitEntry& unit : units) {
            all.emplace_back(unit.spelling);
        }
        return all;
    }();
    return spellings;
}

// The right one counts as a difference: 20 degC + 5 K = 25 degC, and so does 20 degC + 9 degF.
std::optional<Quantity> add(const Quantity& left, const Quantity& right, bool subtract) {
    if (!comparable(left, right)) {
        return std::nullopt;
    }
    const double other = right.value * scale(right) / scale(left);
    const double exact = subtract ? left.value - other : left.value + other;
    const double magnitude = std::max(std::abs(left.value), std::abs(other));
    return make_quantity(decimal(exact, magnitude), left.unit);
}

std::optional<Quantity> convert(const Quantity& quantity, std::string_view unit) {
    const auto target = make_quantity(0, unit);
    if (!target || !comparable(quantity, *target)) {
        return std::nullopt;
    }
    if (folded(quantity.unit) == folded(unit)) {
        return make_quantity(quantity.value, unit);
    }
    const UnitEntry* to = find_unit(unit);
    if (to == nullptr) {
        return make_quantity(quantity.value, unit); // money, or a bare number
    }
    // What is near the zero of a shifted scale keeps only the digits that the shift left it.
    const double magnitude = std::max(std::abs(quantity.base), std::abs(to->offset)) / to->factor;
    const double exact = (quantity.base - to->offset) / to->factor;
    return make_quantity(to->offset == 0 ? decimal(exact) : decimal(exact, magnitude), unit);
}

bool comparable(const Quantity& left, const Quantity& right) {
    return left.measure == right.measure &&
           (left.measure != Measure::money || left.unit == right.unit);
}

std::string to_text(const Quantity& quantity) {
    if (quantity.unit.empty()) {
        return number_text(quantity.value);
    }
    const char* space = quantity.unit == "°" ? "" : " "; // SI Brochure 5.4.3
    return number_text(quantity.value) + space + std::string(quantity.unit);
}

std::string number_text(double value) {
    if (value == 0) {
        return "0"; // never "-0"
    }
    std::array<char, 1200> buffer{};
    const auto written = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                       std::chars_format::fixed);
    return {buffer.data(), written.ptr};
}

std::string to_text(const Limit& limit) {
    if (limit.least && limit.most) {
        const auto from = convert(*limit.least, limit.most->unit).value_or(*limit.least);
        return number_text(from.value) + ".." + to_text(*limit.most);
    }
    if (limit.least) {
        return (limit.strict ? "above " : "at least ") + to_text(*limit.least);
    }
    if (limit.most) {
        return (limit.strict ? "below " : "at most ") + to_text(*limit.most);
    }
    return {};
}

} // namespace matchmark::model
