// A fluid drained or filled in another amount than the device holds.
#include "check/troubles.hpp"

#include <cmath>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// The project's own rule: a measuring jug is read to within this part.
constexpr double as_good_as = 0.05;

void find_wrong_amount(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const Event& event = walk.events[at];
        const model::Action* action = walk.action(event);
        if (!event.act || !action->amount || action->targets.size() != 1)
            continue;
        const model::Item& item = walk.model.item(event.act->item);
        const model::Quantity& said = *action->amount;
        if (!item.amount || !comparable(said, *item.amount) ||
            std::abs(said.base - item.amount->base) <= as_good_as * item.amount->base)
            continue;
        Diagnostic finding = finding_at(walk, at,
                                        fmt::format("{} is {}, and the line says {}",
                                                    model::with_kind(walk.model, event.act->item),
                                                    to_text(*item.amount), to_text(said)));
        finding.label = said.base < item.amount->base ? "less than there is" : "more than there is";
        finding.why = "too little starves what it serves, too much overflows or bursts a seal";
        finding.related.push_back({item.span, "declared here"});
        finding.help = fmt::format("write `{}`, or leave the amount out", to_text(*item.amount));
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule wrong_amount;
const Rule wrong_amount{"wrong-amount", "counts", Severity::warning,
                        "a fluid drained or filled in another amount than is declared",
                        find_wrong_amount};

} // namespace matchmark::check::rules
