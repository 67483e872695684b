// Drives: which key, driver or spanner a screw of a thread has.
#include "published/library.hpp"
#include "published/subjects.hpp"

#include <array>
#include <fmt/core.h>

namespace matchmark::published {

namespace {

struct Size {
    std::string_view thread;
    double size;
};

constexpr auto cap = std::to_array<Size>({{"M1.6", 1.5},
                                          {"M2", 1.5},
                                          {"M2.5", 2},
                                          {"M3", 2.5},
                                          {"M4", 3},
                                          {"M5", 4},
                                          {"M6", 5},
                                          {"M8", 6},
                                          {"M10", 8},
                                          {"M12", 10},
                                          {"M14", 12},
                                          {"M16", 14},
                                          {"M20", 17},
                                          {"M24", 19}});
constexpr auto countersunk = std::to_array<Size>({{"M3", 2},
                                                  {"M4", 2.5},
                                                  {"M5", 3},
                                                  {"M6", 4},
                                                  {"M8", 5},
                                                  {"M10", 6},
                                                  {"M12", 8},
                                                  {"M16", 10},
                                                  {"M20", 12}});
constexpr auto button = std::to_array<Size>(
    {{"M3", 2}, {"M4", 2.5}, {"M5", 3}, {"M6", 4}, {"M8", 5}, {"M10", 6}, {"M12", 8}, {"M16", 10}});
constexpr auto set = std::to_array<Size>({{"M1.6", 0.7},
                                          {"M2", 0.9},
                                          {"M2.5", 1.3},
                                          {"M3", 1.5},
                                          {"M4", 2},
                                          {"M5", 2.5},
                                          {"M6", 3},
                                          {"M8", 4},
                                          {"M10", 5},
                                          {"M12", 6},
                                          {"M16", 8},
                                          {"M20", 10},
                                          {"M24", 12}});
constexpr auto heads = std::to_array<Size>({{"M1.6", 3.2},
                                            {"M2", 4},
                                            {"M2.5", 5},
                                            {"M3", 5.5},
                                            {"M3.5", 6},
                                            {"M4", 7},
                                            {"M5", 8},
                                            {"M6", 10},
                                            {"M8", 13},
                                            {"M10", 16},
                                            {"M12", 18},
                                            {"M14", 21},
                                            {"M16", 24},
                                            {"M18", 27},
                                            {"M20", 30},
                                            {"M22", 34},
                                            {"M24", 36}});
constexpr auto old_heads =
    std::to_array<Size>({{"M10", 17}, {"M12", 19}, {"M14", 22}, {"M22", 32}});
constexpr auto recess = std::to_array<Size>({{"M1.6", 0},
                                             {"M2", 0},
                                             {"M2.5", 1},
                                             {"M3", 1},
                                             {"M3.5", 2},
                                             {"M4", 2},
                                             {"M5", 2},
                                             {"M6", 3},
                                             {"M8", 4},
                                             {"M10", 4}});
constexpr auto other_recess = std::to_array<Size>({{"M2", 1}, {"M3", 2}, {"M8", 3}});
constexpr auto hexalobular = std::to_array<Size>({{"M2", 6},
                                                  {"M2.5", 8},
                                                  {"M3", 10},
                                                  {"M3.5", 15},
                                                  {"M4", 20},
                                                  {"M5", 25},
                                                  {"M6", 30},
                                                  {"M8", 45},
                                                  {"M10", 50},
                                                  {"M12", 55},
                                                  {"M14", 60},
                                                  {"M16", 70},
                                                  {"M18", 80},
                                                  {"M20", 90}});
constexpr auto slots = std::to_array<Size>({{"M1.6", 0.4},
                                            {"M2", 0.5},
                                            {"M2.5", 0.6},
                                            {"M3", 0.8},
                                            {"M4", 1.2},
                                            {"M5", 1.2},
                                            {"M6", 1.6},
                                            {"M8", 2},
                                            {"M10", 2.5}});

struct Width {
    std::string_view size;
    double across;
};

constexpr auto points = std::to_array<Width>({{"6", 1.75},
                                              {"8", 2.40},
                                              {"10", 2.80},
                                              {"15", 3.35},
                                              {"20", 3.95},
                                              {"25", 4.50},
                                              {"30", 5.60},
                                              {"40", 6.75},
                                              {"45", 7.93},
                                              {"50", 8.95},
                                              {"55", 11.35},
                                              {"60", 13.45},
                                              {"70", 15.70},
                                              {"80", 17.75},
                                              {"90", 20.20},
                                              {"100", 22.40}});

struct Standard {
    Origin origin;
    std::string_view drive;
    std::string_view note; // of the library's rows; empty: the rows that have none
};

void add_drive(Table& table, const model::Model& library, const Standard& standard,
               const auto& published) {
    for (const Size& one : published) {
        expect(table, standard.origin, fmt::format("{} {}", one.thread, standard.drive), one.size,
               drive_size(library, standard.drive, one.thread, standard.note), exactly);
    }
}

} // namespace

void add_drives(Table& table, const model::Model& library) {
    for (const Width& one : points) {
        expect(table, {"ISO 10664, hexalobular, across points"},
               fmt::format("size {}, mm", one.size), one.across,
               drive_width(library, "hexalobular", one.size), exactly);
    }
    add_drive(table, library,
              {{"ISO 14579 and ISO 14583, hexalobular by thread"}, "hexalobular", ""}, hexalobular);
    add_drive(table, library, {{"ISO 4762, cap screws"}, "hexagon", "4762"}, cap);
    add_drive(table, library, {{"ISO 10642, countersunk screws"}, "hexagon", "10642"}, countersunk);
    add_drive(table, library, {{"ISO 7380-1, button heads"}, "hexagon", "7380"}, button);
    add_drive(table, library, {{"ISO 4026, set screws"}, "hexagon", "4026"}, set);
    add_drive(table, library, {{"ISO 272, widths across flats"}, "hexagon-head", "ISO 272"}, heads);
    add_drive(table, library, {{"DIN 933 and DIN 934, old widths"}, "hexagon-head", "DIN"},
              old_heads);
    add_drive(table, library, {{"ISO 4757 and ISO 7045, cross recess H"}, "cross-recess", ""},
              recess);
    add_drive(table, library, {{"ISO 4757 and ISO 7045, cross recess Z"}, "cross-recess-z", ""},
              recess);
    add_drive(table, library, {{"JIS B 1111, cross recess"}, "cross-recess", "JIS"}, other_recess);
    for (const Size& one : slots) {
        expect(table, {"ISO 1207, slots"}, fmt::format("{} slot, mm", one.thread), one.size,
               drive_width_for(library, "slotted", one.thread), exactly);
    }
}

} // namespace matchmark::published
