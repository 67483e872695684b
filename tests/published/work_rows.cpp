// Work: usual times, how often a joint may be made again, which tools are basic.
#include "published/library.hpp"
#include "published/subjects.hpp"

#include <array>
#include <fmt/core.h>

namespace matchmark::published {

namespace {

constexpr Origin times_of{"Yang and El-Haik, Design for Six Sigma (2003), table 10.5"};
constexpr Origin basic_of{"Commission Regulation (EU) 2023/1670, Annex I, point 50, basic tools"};

struct Time {
    std::string_view kind;
    std::string_view verb;
    double seconds;
};

// The library holds whole seconds.
constexpr auto times = std::to_array<Time>({{"screw", "undo", 8.0},
                                            {"set-screw", "slacken", 8.0},
                                            {"locking-tab-plug", "disconnect", 6.4},
                                            {"press-fit-plug", "disconnect", 6.4},
                                            {"plain-part", "remove", 2.4 + 1.4},
                                            {"circuit-board", "remove", 2.4 + 1.4},
                                            {"panel", "remove", 2.4 + 1.4}});

struct Joint {
    Origin origin;
    std::string_view kind;
    int times;
};

constexpr auto joints = std::to_array<Joint>(
    {{{"ISO 2320, locking nuts over five removals"}, "nylon-insert-nut", 5},
     {{"ISO 2320, locking nuts over five removals"}, "all-metal-lock-nut", 5},
     {{"Maker's data, snap-on coaxial connectors", Reading::memory}, "snap-coax", 30},
     {{"Maker's data, flip-lock ribbon sockets"}, "flip-lock-ribbon", 20},
     {{"Maker's data after IEC 61210, blade terminals"}, "spade", 6}});

struct ToolRow {
    std::string_view tool;
    bool basic;
};

constexpr auto tools = std::to_array<ToolRow>({{"slotted-driver", true},
                                               {"cross-recess-driver", true},
                                               {"hexalobular-driver", true},
                                               {"hexagon-key", true},
                                               {"spanner", true},
                                               {"pliers", true},
                                               {"crimping-pliers", true},
                                               {"side-cutters", true},
                                               {"tweezers", true},
                                               {"pick", true},
                                               {"heat-mat", false},
                                               {"hot-air-gun", false},
                                               {"suction-cup", false},
                                               {"soldering-iron", false}});

std::string class_of(const model::Model& library, std::string_view name) {
    for (const model::ToolKind& tool : library.tool_kinds) {
        if (tool.name == name && tool.tool_class)
            return *tool.tool_class == model::ToolClass::basic ? "basic" : "not basic";
    }
    return "";
}

} // namespace

void add_work(Table& table, const model::Model& library) {
    for (const Time& one : times) {
        expect(table, times_of, fmt::format("{} {}, s", one.verb, one.kind), one.seconds,
               time_of(library, one.kind, one.verb), within(0.5));
    }
    for (const Joint& one : joints) {
        const model::Kind* kind = find_kind(library, one.kind);
        expect(table, one.origin, fmt::format("{} good for, times", one.kind), one.times,
               kind == nullptr || kind->good_for == 0 ? std::nullopt
                                                      : std::optional<double>(kind->good_for),
               exactly);
    }
    for (const ToolRow& one : tools) {
        expect_same(table, basic_of, std::string(one.tool), one.basic ? "basic" : "not basic",
                    class_of(library, one.tool));
    }
}

} // namespace matchmark::published
