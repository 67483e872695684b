// Each kind of the parts library, in the way of a part or itself renewed: a guide is drafted,
// checks clean, and can be read again when it is written out.
#include "properties/properties.hpp"

#include "drive/commands.hpp"
#include "drive/compilation.hpp"

#include <fmt/core.h>
#include <sstream>

namespace matchmark::properties {

namespace {

using model::Role;

struct Device {
    std::string text;
    std::string goal;
};

Device device_with(const model::Kind& kind) {
    const std::string of_kind = "kind " + kind.name + "\n";
    const std::string frame = "device d \"Device\"\npart frame \"frame\"\npart cover \"cover\"\n";
    const std::string screwed = "fastener screws \"screw\" 2 x screw M3 x 8, hexalobular 10\n"
                                "  holds cover to frame\n";
    const std::string board = "part board \"board\" in frame\n  behind cover\n";
    switch (kind.role) {
    case Role::fastener:
        return {frame + "fastener thing \"thing\" 2 x " + kind.name +
                    " M4 x 10, hexagon 3\n  holds cover to frame\n  torque 3 N.m\n",
                "cover"};
    case Role::bond:
        return {frame + "bond thing \"thing\" " + of_kind + "  holds cover to frame\n", "cover"};
    case Role::connector:
        return {frame + screwed + board + "connector thing \"thing\" " + of_kind +
                    "  joins board to frame\n",
                "board"};
    case Role::part:
        return {frame + screwed + "part thing \"thing\" in frame " + of_kind + "  behind cover\n",
                "thing"};
    case Role::fluid:
        return {frame + screwed +
                    "part tank \"tank\" in frame\n  behind cover\nfluid thing "
                    "\"thing\" in tank 1 l " +
                    of_kind,
                "tank"};
    case Role::energy:
        return {frame + screwed + board + "energy thing \"thing\" " + of_kind + "  feeds board\n",
                "board"};
    }
    return {};
}

// What is wrong with it; empty: nothing.
std::string fault_of(const model::Kind& kind) {
    const Device device = device_with(kind);
    MapDisk disk;
    disk.files["device.mmk"] = device.text;
    std::istringstream in;
    std::ostringstream out;
    std::ostringstream err;
    drive::Terminal terminal{disk, in, out, err, false};
    if (drive::draft_guide({"device.mmk", "replace " + device.goal, "", "guide.mmk"}, terminal) !=
        drive::exit_clean)
        return "not drafted, or not clean\n" + out.str() + err.str();
    if (drive::expand({"guide.mmk", "expanded.mmk"}, terminal) != drive::exit_clean)
        return "not written out\n" + out.str() + err.str();
    const drive::Compilation done = drive::compile(disk, "expanded.mmk");
    if (any_error(done.findings))
        return "written out, it has an error: " + done.findings.front().message;
    return "";
}

} // namespace

bool kinds_hold() {
    MapDisk disk;
    const std::string nothing;
    const model::Model library = drive::compile(disk, "none.mmk", &nothing).model;
    std::size_t failed = 0;
    for (const model::Kind& kind : library.kinds) {
        const std::string fault = fault_of(kind);
        if (fault.empty())
            continue;
        ++failed;
        fmt::print("kind {}: {}\n", kind.name, fault);
    }
    fmt::print("{} kinds of the library, each taken apart and put back in a draft, {} failed\n",
               library.kinds.size(), failed);
    return failed == 0 && library.kinds.size() > 400;
}

} // namespace matchmark::properties
