// A safety message written below the action that it warns of.
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

bool warns(const model::Prose& prose) {
    return prose.kind == model::ProseKind::danger || prose.kind == model::ProseKind::warning ||
           prose.kind == model::ProseKind::caution;
}

std::string whole_lines(const SourceMap& sources, Span span, Span& where) {
    where = {span.file, sources.line_start(span.file, sources.place(span.file, span.begin).line),
             sources.line_start(span.file, sources.place(span.file, span.end).line + 1)};
    std::string text(sources.slice(where));
    if (text.empty() || text.back() != '\n')
        text += '\n';
    return text;
}

void find_late_warning(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const model::Step& step : walk.procedure.steps) {
        if (step.actions.empty() || step.actions.front().derived)
            continue;
        const Span first = step.actions.front().line;
        for (const model::Prose& prose : step.prose) {
            if (!warns(prose) || prose.span.file != first.file || prose.span.begin < first.begin)
                continue;
            Diagnostic finding;
            finding.message = "the warning comes after the action";
            finding.primary = {prose.span.file, prose.span.begin,
                               std::min(prose.span.end, prose.span.begin + 8)};
            finding.label = "read too late";
            finding.why = "who reads line by line has done it by then";
            finding.related.push_back({step.actions.front().head, "the first action of the step"});
            finding.help = "move it above the actions";
            Span where;
            const std::string text = whole_lines(walk.sources, prose.span, where);
            const std::uint32_t at = walk.sources.line_start(
                first.file, walk.sources.place(first.file, first.begin).line);
            finding.edits = {{{first.file, at, at}, text}, {where, ""}};
            findings.push_back(std::move(finding));
        }
    }
}

} // namespace

extern const Rule late_warning;
const Rule late_warning{"late-warning", "prose", Severity::warning,
                        "a safety message written below the action it warns of", find_late_warning};

} // namespace matchmark::check::rules
