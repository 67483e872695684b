// A limit on a line that lets through more than the kind or the book does.
#include "check/troubles.hpp"

#include "model/spelling.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::Limit;
using model::Quantity;

// Is what the kind bounds left unbounded, measured in something else, or bounded further out?
bool laxer(const std::optional<Quantity>& stated, const std::optional<Quantity>& kind, double out) {
    if (!kind)
        return false;
    return !stated || stated->measure != kind->measure || (stated->base - kind->base) * out > 0;
}

bool comes_within(const Quantity& said, const Limit& limit) {
    const auto beyond = [&](const std::optional<Quantity>& bound, double out) {
        return bound && comparable(said, *bound) && (said.base - bound->base) * out > 0;
    };
    return !beyond(limit.most, 1) && !beyond(limit.least, -1);
}

bool laxer(const Limit& stated, const Limit& kind) {
    return laxer(stated.most, kind.most, 1) || laxer(stated.least, kind.least, -1);
}

// The limit alone where the line has it in the usual words; else the line written anew.
Edit with_limit(const Walk& walk, const model::Action& action, const Limit& limit) {
    if (auto edit = reworded(walk, action, to_text(*action.limit), to_text(limit)))
        return *edit;
    model::Action mended = action;
    mended.limit = limit;
    return {action.line, model::as_source(walk.model, walk.procedure.resources, mended)};
}

// A wear limit, measured on a line that passes more than the book does.
void find_lax_wear(const Walk& walk, std::size_t at, const model::Action& action,
                   std::vector<Diagnostic>& findings) {
    const model::Item& item = walk.model.item(action.targets.front().ref.item);
    for (const model::WearLimit& book : item.rare->limits) {
        if (book.name != *action.aspect || !laxer(*action.limit, book.limit))
            continue;
        Diagnostic finding =
            finding_at(walk, at,
                       fmt::format("`{}` is too lax for {}", to_text(*action.limit),
                                   model::with_kind(walk.model, action.targets.front().ref.item)));
        finding.label = fmt::format("the book asks {}", to_text(book.limit));
        finding.why = "what is worn out would pass";
        finding.related.push_back({book.span, "the limit"});
        finding.help = fmt::format("write `{}`, or leave the limit out", to_text(book.limit));
        finding.edits = {with_limit(walk, action, book.limit)};
        findings.push_back(std::move(finding));
    }
}

// To charge a cell less than full hurts nobody.
bool leaves_safety(const model::Kind& kind, const model::Verb& verb) {
    return std::any_of(kind.hazards.begin(), kind.hazards.end(), [&](const model::HazardUse& use) {
        return (verb.from & ~use.safe) == 0 && !model::contains(use.safe, verb.to);
    });
}

// A bare amount, `soften glue with mat 150 degC`, where the kind gives a limit.
void find_other_than_the_limit(const Walk& walk, std::size_t at,
                               std::vector<Diagnostic>& findings) {
    const model::Action& action = *walk.action(walk.events[at]);
    const model::ItemId item = walk.events[at].act->item;
    const model::Verb& verb = walk.model.kind_of(item).verbs[walk.events[at].act->verb];
    if (!action.amount || !verb.limit || comes_within(*action.amount, *verb.limit))
        return;
    Diagnostic finding =
        finding_at(walk, at,
                   fmt::format("`{}` is not what {} bears", to_text(*action.amount),
                               model::with_kind(walk.model, item)));
    finding.label = fmt::format("to {} it asks {}", verb.name, to_text(*verb.limit));
    finding.why = "too much spoils or lights what lies beside it, too little does not do it";
    finding.related.push_back({walk.model.item(item).span, "declared here"});
    finding.help = fmt::format("write `{}`, or leave the amount out", to_text(*verb.limit));
    if (const auto edit = reworded(walk, action, to_text(*action.amount), to_text(*verb.limit)))
        finding.edits = {*edit};
    findings.push_back(std::move(finding));
}

void find_lax_limit(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const Event& event = walk.events[at];
        const model::Action* measuring = walk.action(event);
        if (measuring != nullptr && measuring->sort == model::ActionSort::measure &&
            measuring->limit && !measuring->targets.empty())
            find_lax_wear(walk, at, *measuring, findings);
        if (!event.act)
            continue;
        const model::Action& action = *walk.action(event);
        const model::Kind& kind = walk.model.kind_of(event.act->item);
        const model::Verb& verb = kind.verbs[event.act->verb];
        if (action.derived || leaves_safety(kind, verb))
            continue;
        find_other_than_the_limit(walk, at, findings);
        if (!action.limit || !verb.limit || !laxer(*action.limit, *verb.limit))
            continue;
        Diagnostic finding =
            finding_at(walk, at,
                       fmt::format("`{}` is too lax for {}", to_text(*action.limit),
                                   model::with_kind(walk.model, event.act->item)));
        finding.label = fmt::format("to {} it asks {}", verb.name, to_text(*verb.limit));
        finding.why = "the reader would take for safe what is not yet safe";
        finding.related.push_back({walk.model.item(event.act->item).span, "declared here"});
        finding.help = fmt::format("write `{}`, or leave the limit out", to_text(*verb.limit));
        finding.edits = {with_limit(walk, action, *verb.limit)};
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule lax_limit;
const Rule lax_limit{"lax-limit", "hazard", Severity::error,
                     "a limit on a line that lets through more than the kind or the book does",
                     find_lax_limit};

} // namespace matchmark::check::rules
