// Threads: pitches, diameters, stress areas, holes.
#include "model/bolting.hpp"
#include "published/library.hpp"
#include "published/subjects.hpp"

#include <array>
#include <fmt/core.h>

namespace matchmark::published {

namespace {

constexpr Origin pitches_of{"ISO 261 and ISO 262, pitches"};
constexpr Origin diameters_of{"ISO 68-1 and ISO 724, pitch and root diameters", Reading::memory};
constexpr Origin areas_of{"ISO 898-1, nominal stress areas"};
constexpr Origin fine_areas_of{"ISO 898-1, nominal stress areas, fine pitch", Reading::memory};
constexpr Origin inch_areas_of{"ASME B1.1, tensile stress areas", Reading::memory};
constexpr Origin holes_of{"ISO 273, medium clearance holes", Reading::memory};

struct Value {
    std::string_view thread;
    double value;
};

constexpr auto pitches = std::to_array<Value>(
    {{"M1", 0.25},     {"M1.2", 0.25},     {"M1.4", 0.3},      {"M1.6", 0.35},   {"M2", 0.4},
     {"M2.5", 0.45},   {"M3", 0.5},        {"M3.5", 0.6},      {"M4", 0.7},      {"M5", 0.8},
     {"M6", 1},        {"M8", 1.25},       {"M10", 1.5},       {"M12", 1.75},    {"M14", 2},
     {"M16", 2},       {"M18", 2.5},       {"M20", 2.5},       {"M22", 2.5},     {"M24", 3},
     {"M8x1", 1},      {"M10x1.25", 1.25}, {"M12x1.25", 1.25}, {"M12x1.5", 1.5}, {"M14x1.5", 1.5},
     {"M16x1.5", 1.5}, {"M18x1.5", 1.5},   {"M20x1.5", 1.5},   {"M20x2", 2},     {"M24x2", 2}});

struct Diameters {
    std::string_view thread;
    double pitch_line;
    double root;
};

// ISO 724, as restated to a thousandth.
constexpr auto diameters = std::to_array<Diameters>({{"M1", 0.838, 0.693},
                                                     {"M1.6", 1.373, 1.171},
                                                     {"M2", 1.740, 1.509},
                                                     {"M2.5", 2.208, 1.948},
                                                     {"M3", 2.675, 2.387},
                                                     {"M4", 3.545, 3.141},
                                                     {"M5", 4.480, 4.019},
                                                     {"M6", 5.350, 4.773},
                                                     {"M8", 7.188, 6.466},
                                                     {"M10", 9.026, 8.160},
                                                     {"M12", 10.863, 9.853},
                                                     {"M16", 14.701, 13.546},
                                                     {"M20", 18.376, 16.933},
                                                     {"M24", 22.051, 20.319}});

// mm2, to three figures as the table has them.
constexpr auto areas = std::to_array<Value>({{"M3", 5.03},
                                             {"M3.5", 6.78},
                                             {"M4", 8.78},
                                             {"M5", 14.2},
                                             {"M6", 20.1},
                                             {"M7", 28.9},
                                             {"M8", 36.6},
                                             {"M10", 58.0},
                                             {"M12", 84.3},
                                             {"M14", 115},
                                             {"M16", 157},
                                             {"M18", 192},
                                             {"M20", 245},
                                             {"M22", 303},
                                             {"M24", 353}});

constexpr auto fine_areas = std::to_array<Value>({{"M8x1", 39.2},
                                                  {"M10x1.25", 61.2},
                                                  {"M10x1", 64.5},
                                                  {"M12x1.5", 88.1},
                                                  {"M12x1.25", 92.1},
                                                  {"M14x1.5", 125},
                                                  {"M16x1.5", 167},
                                                  {"M18x1.5", 216},
                                                  {"M20x1.5", 272},
                                                  {"M24x2", 384}});

// In square inches.
constexpr auto inch_areas = std::to_array<Value>({{"UNC-2-56", 0.00370},
                                                  {"UNC-4-40", 0.00604},
                                                  {"UNC-6-32", 0.00909},
                                                  {"UNC-8-32", 0.0140},
                                                  {"UNC-10-24", 0.0175},
                                                  {"UNF-10-32", 0.0200},
                                                  {"UNC-1/4-20", 0.0318},
                                                  {"UNF-1/4-28", 0.0364},
                                                  {"UNC-5/16-18", 0.0524},
                                                  {"UNF-5/16-24", 0.0580},
                                                  {"UNC-3/8-16", 0.0775},
                                                  {"UNF-3/8-24", 0.0878},
                                                  {"UNC-7/16-14", 0.1063},
                                                  {"UNC-1/2-13", 0.1419},
                                                  {"UNF-1/2-20", 0.1599}});

constexpr auto holes = std::to_array<Value>({{"M3", 3.4},
                                             {"M4", 4.5},
                                             {"M5", 5.5},
                                             {"M6", 6.6},
                                             {"M8", 9},
                                             {"M10", 11},
                                             {"M12", 13.5},
                                             {"M16", 17.5},
                                             {"M20", 22}});

using ByThread = std::optional<double> (*)(const model::Thread&);

std::optional<double> pitch_in_mm(const model::Thread& thread) {
    return thread.pitch ? std::optional(thread.pitch->base * 1e3) : std::nullopt;
}

std::optional<double> hole_in_mm(const model::Thread& thread) {
    if (!thread.bears_on || !thread.bears_on->least)
        return std::nullopt;
    return thread.bears_on->least->base * 1e3;
}

std::optional<double> area_in_square_inches(const model::Thread& thread) {
    const auto area = model::stress_area(thread);
    const auto shown = area ? model::make_quantity(*area, "mm2") : std::optional<model::Quantity>();
    const auto inch = model::convert(*model::make_quantity(1, "in"), "mm");
    if (!shown || !inch)
        return std::nullopt;
    return shown->value / (inch->value * inch->value);
}

void add_thread(Table& table, const model::Model& library, const Origin& origin, const char* what,
                const auto& values, ByThread compute, Allowed allowed) {
    for (const Value& value : values) {
        const model::Thread* thread = find_thread(library, value.thread);
        expect(table, origin, fmt::format("{} {}", value.thread, what), value.value,
               thread == nullptr ? std::nullopt : compute(*thread), allowed);
    }
}

} // namespace

void add_threads(Table& table, const model::Model& library) {
    add_thread(table, library, pitches_of, "pitch, mm", pitches, pitch_in_mm, exactly);
    for (const Diameters& one : diameters) {
        const model::Thread* thread = find_thread(library, one.thread);
        const auto of = [&](ByThread compute) {
            return thread == nullptr ? std::nullopt : compute(*thread);
        };
        // Half a thousandth is the table's rounding; a tenth of that is spent on its own decimals.
        expect(table, diameters_of, fmt::format("{} pitch diameter, mm", one.thread),
               one.pitch_line, of(model::pitch_diameter), within(0.00055));
        expect(table, diameters_of, fmt::format("{} root diameter, mm", one.thread), one.root,
               of(model::root_diameter), within(0.00055));
    }
    add_thread(table, library, areas_of, "stress area, mm2", areas, model::stress_area,
               percent(0.6));
    add_thread(table, library, fine_areas_of, "stress area, mm2", fine_areas, model::stress_area,
               percent(0.6));
    add_thread(table, library, inch_areas_of, "stress area, square inches", inch_areas,
               area_in_square_inches, percent(0.6));
    add_thread(table, library, holes_of, "hole, mm", holes, hole_in_mm, exactly);
}

} // namespace matchmark::published
