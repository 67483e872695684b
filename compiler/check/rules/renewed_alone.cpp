// A part renewed by itself that is sold only with its assembly.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

void find_renewed_alone(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const model::Action* action = walk.action(walk.events[at]);
        if (action == nullptr || action->sort != model::ActionSort::replace)
            continue;
        for (const model::Target& target : action->targets) {
            const model::Item& item = walk.model.item(target.ref.item);
            if (!item.renewed_as.known())
                continue;
            Diagnostic finding =
                finding_at(walk, at,
                           fmt::format("{} cannot be renewed alone",
                                       model::with_kind(walk.model, target.ref.item)));
            finding.label = "promised here";
            finding.why =
                fmt::format("it comes only with {}", model::with_kind(walk.model, item.renewed_as));
            finding.related.push_back({item.span, "declared here"});
            finding.help = fmt::format("replace `{}`", walk.model.item(item.renewed_as).name);
            findings.push_back(std::move(finding));
        }
    }
}

} // namespace

extern const Rule renewed_alone;
const Rule renewed_alone{"renewed-alone", "goal", Severity::error,
                         "renewing by itself a part that is sold only with its assembly",
                         find_renewed_alone};

} // namespace matchmark::check::rules
