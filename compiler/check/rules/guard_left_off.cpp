// A guard that does not go back.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

void find_guard_left_off(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const model::Action* action = walk.action(walk.events[at]);
        if (action == nullptr || action->sort != model::ActionSort::leave_off)
            continue;
        for (const model::Target& target : action->targets) {
            const model::ItemId id = target.ref.item;
            if (!walk.bench.exists(id) || !walk.model.kind_of(id).guards)
                continue;
            Diagnostic finding = finding_at(
                walk, at, fmt::format("{} is left off", model::with_kind(walk.model, id)));
            finding.primary = target.ref.span;
            finding.label = "keeps hands off no more";
            finding.why = "whoever runs the machine next does not know that it is bare";
            finding.help = "fit it again; where another guard takes its place, write "
                           "`allow guard-left-off` with the reason";
            findings.push_back(std::move(finding));
        }
    }
}

} // namespace

extern const Rule guard_left_off;
const Rule guard_left_off{"guard-left-off", "hazard", Severity::error,
                          "a part whose kind `guards` that `leave-off` keeps from going back",
                          find_guard_left_off};

} // namespace matchmark::check::rules
