// A limit on a line that lets through more than the kind's own does.
#include "check/troubles.hpp"

#include "model/spelling.hpp"

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

bool laxer(const Limit& stated, const Limit& kind) {
    return laxer(stated.most, kind.most, 1) || laxer(stated.least, kind.least, -1);
}

// The limit alone where the line has it in the usual words; else the line written anew.
Edit with_limit(const Walk& walk, const model::Action& action, const Limit& limit) {
    const Span line = action.line;
    const std::string text =
        walk.sources.file(line.file).text.substr(line.begin, line.end - line.begin);
    const std::string stated = to_text(*action.limit);
    const std::size_t at = text.rfind(stated);
    if (at != std::string::npos) {
        const auto begin = line.begin + static_cast<std::uint32_t>(at);
        const auto end = begin + static_cast<std::uint32_t>(stated.size());
        return {{line.file, begin, end}, to_text(limit)};
    }
    model::Action mended = action;
    mended.limit = limit;
    return {line, model::as_source(walk.model, walk.procedure.resources, mended)};
}

void find_lax_limit(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const Event& event = walk.events[at];
        if (!event.act)
            continue;
        const model::Action& action = *walk.action(event);
        const model::Kind& kind = walk.model.kind_of(event.act->item);
        const model::Verb& verb = kind.verbs[event.act->verb];
        if (action.derived || !action.limit || !verb.limit || !laxer(*action.limit, *verb.limit))
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
                     "a limit on a line that lets through more than the kind's own",
                     find_lax_limit};

} // namespace matchmark::check::rules
