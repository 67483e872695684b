// Something that has to be so first: drain before the hose clamp comes off.
#include "check/dangers.hpp"
#include "check/too_early.hpp"
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

model::NeedOf who_asks(const Walk& walk, model::ItemId item, const bench::UnmetNeed& reason) {
    for (const model::Need& need : walk.model.item(item).needs) {
        if (need.condition.item.item == reason.item && need.span == reason.because)
            return need.of;
    }
    return model::NeedOf::its_line;
}

const char* says(model::NeedOf of) {
    switch (of) {
    case model::NeedOf::its_line:
        return "says so";
    case model::NeedOf::vessel:
        return "runs out where its vessel is opened";
    case model::NeedOf::holder:
        return "holds it";
    case model::NeedOf::cell:
        return "cuts off what nothing outside does";
    case model::NeedOf::supply:
        return "fills it again";
    case model::NeedOf::load:
        return "comes down with it";
    }
    return "";
}

// More than one thing stands behind the joint: who writes that nothing does, because there is no
// oil, would say of the pressure that it is not there either.
bool lets_out_more(const Walk& walk, model::ItemId joint, model::ItemId first) {
    const auto& needs = walk.model.item(joint).needs;
    return std::any_of(needs.begin(), needs.end(), [&](const model::Need& need) {
        return need.of == model::NeedOf::vessel && need.condition.item.item != first;
    });
}

void find_unmet_need(const Walk& walk, std::vector<Diagnostic>& findings) {
    const ToldAsTooEarly told(walk);
    each_refusal<bench::UnmetNeed>(walk, [&](const Trouble& trouble,
                                             const bench::UnmetNeed& reason) {
        if (told.covers(trouble))
            return;
        const bench::Act& act = act_of(walk, trouble);
        const std::string wanted =
            model::states_in_words(walk.model.kind_of(reason.item), reason.states);
        Diagnostic finding = refused(
            walk, trouble,
            fmt::format("{}{} {} {} {} first",
                        danger_ended_in(walk.model, reason.item, reason.states),
                        model::with_kind(walk.model, act.item),
                        walk.model.item(act.item).count > 1 ? "need" : "needs",
                        act.item == reason.item ? "to be" : model::quoted(walk.model, reason.item),
                        wanted));
        finding.label = "too early here";
        finding.why =
            fmt::format("{} is not {} yet", model::with_kind(walk.model, reason.item), wanted);
        const model::NeedOf of = who_asks(walk, act.item, reason);
        finding.related.push_back({reason.because, says(of)});
        if (const auto early = too_early(walk, trouble))
            move_down(walk, *early, "put back already here", finding);
        if (of == model::NeedOf::vessel && !lets_out_more(walk, act.item, reason.item))
            finding.help += fmt::format("; if nothing stands behind {}, say `lets nothing out` in "
                                        "its declaration, or `needs` for what does",
                                        model::quoted(walk.model, act.item));
        findings.push_back(std::move(finding));
    });
}

} // namespace

extern const Rule unmet_need;
const Rule unmet_need{"unmet-need", "needs", Severity::error,
                      "a verb whose declared `needs ITEM STATE to VERB` does not hold",
                      find_unmet_need};

} // namespace matchmark::check::rules
