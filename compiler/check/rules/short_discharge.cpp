// A charge that is given less time than it takes to run down.
#include "check/discharge.hpp"
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

std::string enough(double seconds) { return model::number_text(model::told_time(seconds)) + " s"; }

void find_short_discharge(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const Discharge& discharge : discharges(walk)) {
        const auto& stated = walk.action(walk.events[discharge.event])->duration;
        const auto takes = model::discharge_time(discharge.facts);
        if (!stated || !takes || stated->base >= *takes)
            continue;
        Diagnostic finding =
            finding_at(walk, discharge.event,
                       fmt::format("{} is not discharged in {}",
                                   model::with_kind(walk.model, discharge.item), to_text(*stated)));
        finding.label = fmt::format("takes {}", enough(*takes));
        finding.why = fmt::format(
            "{} from {} to {} through {} takes {}: R x C x ln(V0 / V)",
            to_text(*discharge.facts.capacitance), to_text(*discharge.facts.voltage),
            to_text(*discharge.facts.limit), to_text(*discharge.facts.through), enough(*takes));
        finding.related.push_back({walk.model.item(discharge.item).span, "declared here"});
        finding.help = fmt::format("write `for {}`, or leave the time out", enough(*takes));
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule short_discharge;
const Rule short_discharge{"short-discharge", "hazard", Severity::error,
                           "a charge given less time than it takes to run down",
                           find_short_discharge};

} // namespace matchmark::check::rules
