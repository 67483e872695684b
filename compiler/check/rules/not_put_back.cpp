// What came off and is not back at the end.
#include "check/too_early.hpp"
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

bool has_put_back(const Walk& walk) {
    const auto& steps = walk.procedure.steps;
    return walk.guide().derives_put_back ||
           std::any_of(steps.begin(), steps.end(), [](const model::Step& step) {
               return step.section == model::Section::put_back;
           });
}

Diagnostic finding_for(const Walk& walk, const LeftOff& left) {
    const auto gone = last_left(walk, left.items.back());
    const std::size_t at = gone.value_or(0);
    const bool one = !several(walk, left.items);
    Diagnostic finding =
        finding_at(walk, at,
                   fmt::format("{} {} off and {} never put back", names(walk, left.items),
                               one ? "comes" : "come", one ? "is" : "are"));
    finding.label = one ? "comes off here" : "come off here";
    if (at < walk.events.size()) {
        if (const auto* action = walk.action(walk.events[at]))
            finding.primary = action->head;
    }
    finding.related.clear();
    if (left.at >= walk.events.size() || !left.acts.empty()) {
        const Span last = place_of(walk, left.at);
        if (last != finding.primary)
            finding.related.push_back({last, "still off here"});
    }
    for (const auto item : left.items) {
        const auto& thing = walk.model.item(item);
        if (thing.touches.empty())
            continue;
        finding.why = fmt::format("`{}` is held by {}; the reader would finish without",
                                  walk.model.item(thing.touches.front()).name,
                                  model::with_kind(walk.model, item));
    }
    const model::Kind& kind = walk.model.kind_of(left.items.back());
    if (kind.role == model::Role::energy || kind.role == model::Role::fluid)
        finding.why = fmt::format("the reader would finish with it still `{}`",
                                  kind.states[bench::state_of(walk.bench, walk.state_at(at + 1),
                                                              left.items.back(), 0, 0)]);
    if (finding.why.empty())
        finding.why = "the reader would finish with parts on the tray";
    return finding;
}

void find_not_put_back(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const LeftOff& left : walk.left_off) {
        if (left.closed_in || told_as_too_early(walk, left))
            continue;
        Diagnostic finding = finding_for(walk, left);
        if (!has_put_back(walk)) {
            const Span end = walk.guide().end;
            finding.help = "let the compiler write the way back";
            const std::string& text = walk.sources.file(end.file).text;
            const bool open = end.begin > 0 && text[end.begin - 1] != '\n';
            finding.edits = {{end, std::string(open ? "\n" : "") + "\nput-back\n  derived\n"}};
        } else {
            mend_with(walk, finding, left.at, left.acts);
        }
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule not_put_back;
const Rule not_put_back{"not-put-back", "not back", Severity::error,
                        "what came off and is not back at the end", find_not_put_back};

} // namespace matchmark::check::rules
