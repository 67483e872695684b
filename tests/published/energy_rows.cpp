// Stored energy: cells by their watt-hours, capacitors and how long they stay charged.
#include "model/stored_energy.hpp"
#include "published/library.hpp"
#include "published/subjects.hpp"

#include <array>
#include <fmt/core.h>

namespace matchmark::published {

namespace {

constexpr Origin watt_hours_of{"49 CFR 171.8 and IATA packing instructions 965-967, watt-hours"};
constexpr Origin machines{"IEC 60204-1, 6.2.4, 60 V within 5 s; 60 uC are exempt"};
constexpr Origin appliances{"IEC 60335-1, 34 V"};
constexpr Origin capacitors{"Physics by hand: E = C V^2 / 2, t = R C ln(V0 / V)"};
constexpr Origin touch_voltage{"IEC 62368-1, 60 V d.c. as safe to touch", Reading::memory};
constexpr Origin mains_voltage{"IEC 60364-4-41, 50 V a.c. as safe to touch", Reading::memory};
constexpr Origin hot_surface{"ISO 13732-1, burn threshold for 8 h and longer", Reading::memory};

struct Described {
    std::string_view description;
    double energy;
};

constexpr auto cells = std::to_array<Described>({{"3279 mAh 3.87 V", 12.69},
                                                 {"5.2 Ah 11.1 V", 57.72},
                                                 {"6.75 Ah 14.8 V", 99.9},
                                                 {"6 Ah 20 V", 120},
                                                 {"13.4 Ah 36 V", 482.4}});
// J, to three figures.
constexpr auto charged = std::to_array<Described>(
    {{"470 uF 400 V", 37.6}, {"100 uF 325 V", 5.28}, {"1 uF 2100 V", 2.21}});

struct Fall {
    const Origin* origin;
    double resistance;  // kohm
    double capacitance; // uF
    double from;
    double to;
    double seconds;
};

constexpr auto falls = std::to_array<Fall>({{&capacitors, 10, 100, 400, 60, 1.897},
                                            {&capacitors, 10, 470, 400, 60, 8.92},
                                            {&capacitors, 1, 470, 400, 60, 0.892},
                                            {&capacitors, 2.2, 100, 325, 60, 0.372},
                                            {&capacitors, 1e4, 1, 2100, 60, 35.6},
                                            {&capacitors, 100, 470, 400, 60, 89.2},
                                            {&appliances, 100, 470, 400, 34, 115.9},
                                            // The resistor with which the limit is just kept.
                                            {&machines, 29.59, 100, 325, 60, 5}});

model::Model device_with(const auto& described) {
    std::string text = "device rack \"Rack\"\n";
    std::size_t number = 0;
    for (const Described& one : described)
        text += fmt::format("part piece{} kind plain-part {}\n", ++number, one.description);
    return model_of(text);
}

void add_described(Table& table, const Origin& origin, const auto& described, const char* unit,
                   Allowed allowed) {
    const model::Model device = device_with(described);
    std::size_t number = 0;
    for (const Described& one : described) {
        const auto joules =
            model::stored_energy(item_named(device, fmt::format("piece{}", ++number)));
        const auto shown = joules ? model::convert(*model::make_quantity(*joules, "J"), unit)
                                  : std::optional<model::Quantity>();
        expect(table, origin, fmt::format("{}, {}", one.description, unit), one.energy,
               shown ? std::optional(shown->value) : std::nullopt, allowed);
    }
}

double base(double value, std::string_view unit) { return model::make_quantity(value, unit)->base; }

// The upper limit that some verb of the kind proves or reaches, in the unit.
std::optional<double> limit_of(const model::Model& library, std::string_view kind,
                               std::string_view verb, std::string_view unit) {
    const model::Kind* found = find_kind(library, kind);
    const model::Verb* done = found == nullptr ? nullptr : model::find_verb(*found, verb);
    if (done == nullptr || !done->limit || !done->limit->most)
        return std::nullopt;
    const auto shown = model::convert(*done->limit->most, unit);
    return shown ? std::optional(shown->value) : std::nullopt;
}

} // namespace

void add_energy(Table& table, const model::Model& library) {
    add_described(table, watt_hours_of, cells, "Wh", percent(0.01));
    add_described(table, capacitors, charged, "J", percent(0.3));
    for (const Fall& one : falls) {
        expect(table, *one.origin,
               fmt::format("{} kohm, {} uF, {} V to {} V, s", one.resistance, one.capacitance,
                           one.from, one.to),
               one.seconds,
               model::discharge_time(base(one.resistance, "kohm"), base(one.capacitance, "uF"),
                                     one.from, one.to),
               percent(0.2));
    }
    // A charge that is under the limit from the start takes no time.
    expect(table, machines, "1 uF charged to 60 V, s", 0,
           model::discharge_time(base(1, "Mohm"), base(1, "uF"), 60, 60), exactly);
    expect(table, touch_voltage, "capacitor proved below, V", 60,
           limit_of(library, "capacitor", "prove", "V"), exactly);
    expect(table, mains_voltage, "mains isolator proved below, V", 50,
           limit_of(library, "mains-isolator", "prove", "V"), exactly);
    expect(table, hot_surface, "heat cooled below, degC", 43,
           limit_of(library, "heat", "cool", "degC"), exactly);
}

} // namespace matchmark::published
