// A charge run down through another resistor than the one that the line names.
#include "check/discharge.hpp"
#include "check/troubles.hpp"
#include "model/stated_numbers.hpp"

#include <cmath>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::Quantity;
using model::Resource;

// The usual tolerance of a resistor's value (IEC 60063, series E24, from memory).
constexpr double tolerance = 0.05;

bool differ(const Quantity& left, const Quantity& right) {
    return std::abs(left.base - right.base) > tolerance * std::max(left.base, right.base);
}

Diagnostic differs(const Walk& walk, const Discharge& discharge, const Resource& tool,
                   const Quantity& stated) {
    Diagnostic finding =
        finding_at(walk, discharge.event,
                   fmt::format("{} is discharged through {} with a tool of {}",
                               model::with_kind(walk.model, discharge.item),
                               model::to_text(*discharge.facts.through), model::to_text(stated)));
    finding.label = "one of the two is wrong";
    finding.why = "through too small a resistor a charge goes off as a short, through too great a "
                  "one it stays";
    finding.related.push_back({tool.span, "the tool"});
    finding.help =
        fmt::format("write `through {}`, or list the other resistor", model::to_text(stated));
    return finding;
}

void find_other_resistor(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const Discharge& discharge : discharges(walk)) {
        if (!discharge.facts.through)
            continue;
        for (const model::ResourceId id : walk.action(walk.events[discharge.event])->with) {
            const Resource& tool = walk.procedure.resources[id.value];
            const auto stated = model::measures_up_to(tool, model::Measure::resistance);
            if (stated && differ(*stated, *discharge.facts.through))
                findings.push_back(differs(walk, discharge, tool, *stated));
        }
    }
}

} // namespace

extern const Rule other_resistor;
const Rule other_resistor{"other-resistor", "hazard", Severity::error,
                          "a charge run down through another resistor than the tool is",
                          find_other_resistor};

} // namespace matchmark::check::rules
