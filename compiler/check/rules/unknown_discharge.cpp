// A charge run down through a resistor, of which too little is said to know how long it takes.
#include "check/discharge.hpp"
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

void find_unknown_discharge(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const Discharge& discharge : discharges(walk)) {
        const auto lacks = missing(discharge.facts);
        if (walk.action(walk.events[discharge.event])->means->empty() || lacks.empty())
            continue;
        const model::Item& item = walk.model.item(discharge.item);
        Diagnostic finding = finding_at(walk, discharge.event,
                                        fmt::format("how long {} takes to run down is not known",
                                                    model::with_kind(walk.model, discharge.item)));
        finding.label = fmt::format("{} is not said", model::list(lacks));
        finding.why = "the reader waits too short a time, or longer than need be";
        finding.related.push_back({item.span, "described here"});
        finding.help = fmt::format("add {}", model::list(lacks));
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule unknown_discharge;
const Rule unknown_discharge{"unknown-discharge", "hazard", Severity::advice,
                             "a discharge of which too little is said to work out its time",
                             find_unknown_discharge};

} // namespace matchmark::check::rules
