// What screws bear: strengths of the classes, breaking loads, breaking torques.
#include "model/bolting.hpp"
#include "published/library.hpp"
#include "published/subjects.hpp"

#include <array>
#include <fmt/core.h>

namespace matchmark::published {

namespace {

constexpr Origin classes_of{"ISO 898-1, table 3, property classes", Reading::memory};
constexpr Origin loads_of{"ISO 898-1, minimum tensile loads"};
constexpr Origin breaking_of{"ISO 898-7, minimum breaking torques", Reading::memory};
constexpr Origin stainless_of{"ISO 3506-1, stainless steel grades", Reading::memory};
constexpr Origin inch_of{"SAE J429, inch grades", Reading::memory};

struct Strengths {
    std::string_view grade;
    double diameter; // mm
    double tensile;
    double yield;
};

constexpr auto strength_classes = std::to_array<Strengths>({{"class-4.6", 8, 400, 240},
                                                            {"class-5.6", 8, 500, 300},
                                                            {"class-6.8", 8, 600, 480},
                                                            {"class-8.8", 16, 800, 640},
                                                            {"class-8.8", 18, 830, 660},
                                                            {"class-9.8", 8, 900, 720},
                                                            {"class-10.9", 8, 1040, 940},
                                                            {"class-12.9", 8, 1220, 1100}});

constexpr auto stainless = std::to_array<Strengths>({{"A2-50", 8, 500, 210},
                                                     {"A2-70", 8, 700, 450},
                                                     {"A4-70", 8, 700, 450},
                                                     {"A4-80", 8, 800, 600}});

// Tensile and yield strength in thousands of pounds to the square inch.
constexpr auto inch_grades = std::to_array<Strengths>(
    {{"SAE-5", 12, 120, 92}, {"SAE-8", 12, 150, 130}, {"SAE-2", 12, 74, 57}});

struct Load {
    std::string_view grade;
    std::string_view thread;
    double newtons;
};

constexpr auto loads = std::to_array<Load>({{"class-8.8", "M3", 4020},
                                            {"class-8.8", "M4", 7020},
                                            {"class-8.8", "M5", 11350},
                                            {"class-8.8", "M6", 16100},
                                            {"class-8.8", "M8", 29200},
                                            {"class-8.8", "M10", 46400},
                                            {"class-8.8", "M12", 67400},
                                            {"class-8.8", "M16", 125000},
                                            {"class-8.8", "M20", 203000},
                                            {"class-8.8", "M24", 293000},
                                            {"class-10.9", "M3", 5230},
                                            {"class-10.9", "M5", 14800},
                                            {"class-10.9", "M6", 20900},
                                            {"class-10.9", "M8", 38100},
                                            {"class-10.9", "M10", 60300},
                                            {"class-10.9", "M12", 87700},
                                            {"class-4.6", "M3", 2010},
                                            {"class-4.6", "M6", 8040},
                                            {"class-4.6", "M8", 14600}});

struct Breaking {
    std::string_view thread;
    std::array<double, 4> torques; // of the four classes, N.m
};

constexpr std::array<std::string_view, 4> breaking_classes{"class-8.8", "class-9.8", "class-10.9",
                                                           "class-12.9"};
constexpr auto breaking = std::to_array<Breaking>({{"M1", {0.033, 0.036, 0.040, 0.045}},
                                                   {"M1.2", {0.075, 0.082, 0.092, 0.10}},
                                                   {"M1.4", {0.12, 0.13, 0.14, 0.16}},
                                                   {"M1.6", {0.16, 0.18, 0.20, 0.22}},
                                                   {"M2", {0.37, 0.40, 0.45, 0.50}},
                                                   {"M2.5", {0.82, 0.90, 1.0, 1.1}},
                                                   {"M3", {1.5, 1.7, 1.9, 2.1}},
                                                   {"M3.5", {2.4, 2.7, 3.0, 3.3}},
                                                   {"M4", {3.6, 3.9, 4.4, 4.9}},
                                                   {"M5", {7.6, 8.3, 9.3, 10}},
                                                   {"M6", {13, 14, 16, 17}},
                                                   {"M7", {23, 25, 28, 31}},
                                                   {"M8", {33, 36, 40, 44}},
                                                   {"M10", {66, 72, 81, 90}}});

std::optional<double> in_unit(std::optional<double> megapascals, std::string_view unit) {
    if (!megapascals)
        return std::nullopt;
    const auto shown = model::convert(*model::make_quantity(*megapascals, "MPa"), unit);
    return shown ? std::optional(shown->value) : std::nullopt;
}

void add_classes(Table& table, const model::Model& library, const Origin& origin,
                 const auto& published, std::string_view unit, double thousands, Allowed allowed) {
    for (const Strengths& one : published) {
        const model::Grade* grade = find_grade(library, one.grade);
        const auto of = [&](const model::Strength model::Grade::*which) {
            return grade == nullptr
                       ? std::nullopt
                       : in_unit(model::strength_at(grade->*which, one.diameter), unit);
        };
        const auto named = [&](const char* what) {
            return fmt::format("{} of {} mm, {}, {}", one.grade, one.diameter, what, unit);
        };
        expect(table, origin, named("tensile"), one.tensile * thousands, of(&model::Grade::tensile),
               allowed);
        expect(table, origin, named("yield"), one.yield * thousands, of(&model::Grade::yield),
               allowed);
    }
}

} // namespace

void add_strengths(Table& table, const model::Model& library) {
    add_classes(table, library, classes_of, strength_classes, "MPa", 1, exactly);
    add_classes(table, library, stainless_of, stainless, "MPa", 1, exactly);
    add_classes(table, library, inch_of, inch_grades, "psi", 1000, percent(0.5));
    for (const Load& load : loads) {
        const model::Thread* thread = find_thread(library, load.thread);
        const model::Grade* grade = find_grade(library, load.grade);
        const bool known = thread != nullptr && grade != nullptr;
        expect(table, loads_of, fmt::format("{} {}, N", load.thread, load.grade), load.newtons,
               known ? model::breaking_force(*thread, *grade) : std::nullopt, percent(0.6));
    }
    for (const Breaking& one : breaking) {
        const model::Thread* thread = find_thread(library, one.thread);
        for (std::size_t i = 0; i < breaking_classes.size(); ++i) {
            const model::Grade* grade = find_grade(library, breaking_classes[i]);
            const bool known = thread != nullptr && grade != nullptr;
            // Two figures printed are up to 5 % (10 for 10.4). Up to M1.4 the standard has a finer
            // tolerance, whose smallest roots are not at hand.
            const bool smallest =
                one.thread.starts_with("M1.") ? one.thread != "M1.6" : one.thread == "M1";
            expect(table, breaking_of, fmt::format("{} {}, N.m", one.thread, breaking_classes[i]),
                   one.torques[i], known ? model::breaking_torque(*thread, *grade) : std::nullopt,
                   percent(smallest ? 8 : 5));
        }
    }
}

} // namespace matchmark::published
