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

// Do all of the group stand as the act leaves them? Else some may be off.
bool all_stand_so(const Walk& walk, std::size_t at) {
    const bench::Act& act = *walk.events[at].act;
    const model::Kind& kind = walk.model.kind_of(act.item);
    const model::StateId to = kind.verbs[act.verb].to;
    bench::State then = walk.state_at(at);
    bench::perform(walk.bench, then, act);
    for (std::uint16_t member = 0; member < walk.model.item(act.item).count; ++member) {
        if (bench::state_of(walk.bench, then, act.item, member, kind.set_of[to]) != to)
            return false;
    }
    return true;
}

// How a thing stands that never came off, or is not wholly on, a source that is cut, a spring held:
// in words.
std::string left_as(const Walk& walk, const LeftOff& left, std::size_t at) {
    if (left.items.size() != 1 || at >= walk.events.size() || !walk.events[at].act)
        return {};
    const model::ItemId item = left.items.front();
    const model::Kind& kind = walk.model.kind_of(item);
    const bool flows = kind.role == model::Role::energy || kind.role == model::Role::fluid;
    if (walk.events[at].act->item != item || !all_stand_so(walk, at) ||
        (!flows && !bench::present(walk.bench, walk.state_at(at + 1), item)))
        return {};
    return kind.states[kind.verbs[walk.events[at].act->verb].to];
}

// A supply, a weight, a charge: nothing that lies on a tray.
bool all_flow(const Walk& walk, const std::vector<model::ItemId>& items) {
    return std::all_of(items.begin(), items.end(), [&](model::ItemId item) {
        const model::Role role = walk.model.item(item).role;
        return role == model::Role::energy || role == model::Role::fluid;
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
    if (all_flow(walk, left.items)) {
        finding.message = fmt::format("{} {} not as {} at first", names(walk, left.items),
                                      one ? "is" : "are", one ? "it was" : "they were");
        finding.label = "otherwise from here on";
        finding.why = "the reader would finish with the device as it is worked on";
    }
    const std::string state = left_as(walk, left, at);
    if (!state.empty()) {
        finding = finding_at(
            walk, at,
            fmt::format("{} {} left `{}`", names(walk, left.items), one ? "is" : "are", state));
        finding.label = "so from here on";
    }
    if (at < walk.events.size()) {
        if (const auto* action = walk.action(walk.events[at]))
            finding.primary = action->head;
    }
    finding.related.clear();
    if (left.at >= walk.events.size() || !left.acts.empty()) {
        const Span last = place_of(walk, left.at);
        if (last != finding.primary)
            finding.related.push_back({last, state.empty() && !all_flow(walk, left.items)
                                                 ? "still off here"
                                                 : "still so here"});
    }
    for (const auto item : left.items) {
        const auto& thing = walk.model.item(item);
        if (thing.touches.empty())
            continue;
        finding.why = fmt::format("`{}` is held by {}; the reader would finish without",
                                  walk.model.item(thing.touches.front()).name,
                                  model::with_kind(walk.model, item));
    }
    if (!state.empty())
        finding.why = fmt::format("the reader would finish with it still `{}`", state);
    if (finding.why.empty())
        finding.why = "the reader would finish with parts on the tray";
    return finding;
}

void find_not_put_back(const Walk& walk, std::vector<Diagnostic>& findings) {
    const ToldAsTooEarly told(walk);
    for (const LeftOff& left : walk.left_off) {
        if (left.closed_in || told.covers(left))
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
