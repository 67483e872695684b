// Numbers with units: what is measured, how much of it, and what may be compared or added.
//
// Unit factors: the International System of Units (BIPM, SI Brochure, 9th edition, 2019) and, for
// inch and pound units, NIST Special Publication 811 (2008), appendix B.8.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace matchmark::model {

// What a unit measures. Torque and energy have equal dimensions and are kept apart: nobody tightens
// to a joule.
enum class Measure : unsigned char {
    number,
    length,
    area,
    volume,
    mass,
    time,
    temperature,
    angle,
    force,
    torque,
    pressure,
    energy,
    power,
    voltage,
    current,
    charge,
    resistance,
    capacitance,
    frequency,
    ratio,
    money,
};

// A unit as written; empty for a bare number. Kept in place, so that a quantity is copied like a
// number.
class Unit {
public:
    static constexpr std::size_t most = 8; // bytes; the longest is "kgf⋅cm"

    Unit() = default;
    // What is longer than `most` is no unit and is cut.
    Unit(std::string_view spelling);

    operator std::string_view() const;
    [[nodiscard]] bool empty() const { return bytes_[0] == 0; }
    friend bool operator==(const Unit&, const Unit&) = default;
    friend bool operator==(const Unit& unit, std::string_view spelling) {
        return std::string_view(unit) == spelling;
    }

private:
    std::array<char, most> bytes_{}; // the rest is zero
};

struct Quantity {
    double value = 0; // as written
    Unit unit;
    Measure measure = Measure::number;
    double base =
        0; // in the measure's base unit (m, kg, s, N.m, V, ...); money stays in its currency
};

// "3 mm" -> a Quantity; nothing when the unit is not known.
std::optional<Quantity> make_quantity(double value, std::string_view unit);

// The unit's measure, for messages: "a length", "a torque".
std::string_view describe(Measure measure);

// All unit spellings, for "did you mean".
const std::vector<std::string>& unit_spellings();

// Nothing when the two measure different things (or are in different currencies). The unit is the
// left one's.
std::optional<Quantity> add(const Quantity& left, const Quantity& right, bool subtract = false);

// The same amount in another unit; nothing when the measures differ.
std::optional<Quantity> convert(const Quantity& quantity, std::string_view unit);

bool comparable(const Quantity& left, const Quantity& right);

// "0.2 N.m": shortest digits that give the value back, the unit as written.
std::string to_text(const Quantity& quantity);
std::string number_text(double value);

// A bound or a pair of bounds: at least, at most, below, above, from..to.
struct Limit {
    std::optional<Quantity> least;
    std::optional<Quantity> most;
    bool strict = false; // below and above
};

// As written in the source: "at least 5 mm", "below 60 V", "0.05..0.15 mm".
std::string to_text(const Limit& limit);

} // namespace matchmark::model
