// Work on what is still covered, or buried under another fastener.
#include "check/too_early.hpp"
#include "check/troubles.hpp"

#include <fmt/core.h>
#include <iterator>
#include <optional>

namespace matchmark::check::rules {

namespace {

// Behind the lines that do it only later.
std::optional<std::size_t> place_behind(const Walk& walk, const std::vector<Span>& lines) {
    for (std::size_t at = walk.events.size(); at-- > 0 && !lines.empty();) {
        const model::Action* action = walk.action(walk.events[at]);
        if (action != nullptr && !action->derived && action->line == lines.back())
            return at + 1;
    }
    return std::nullopt;
}

// What is done at the terminals goes down to where they lie open; the opening does not go up.
void do_when_open(const Walk& walk, const Trouble& trouble, Diagnostic& finding) {
    const model::Action& action = *walk.action(walk.events[trouble.event]);
    const auto place = place_behind(walk, trouble.done_later);
    if (!place || action.derived || action.targets.size() != 1)
        return;
    finding.edits.clear();
    mend_with(walk, finding, *place, {act_of(walk, trouble)}, {action.line});
    if (!finding.edits.empty())
        finding.edits.push_back(remove_line(walk.sources, action.line));
    finding.help = "move it down";
}

// Lines that all move up to where the same things are not in the way yet: a cover put on before its
// plugs.
struct MovedUp {
    std::size_t to = 0; // an event
    std::vector<model::ItemId> by;
    std::vector<model::ItemId> items;
    std::size_t finding = 0;
};

bool moves_up(const Walk& walk, const Trouble& trouble) {
    const bench::Act& act = act_of(walk, trouble);
    return trouble.missing.size() == 1 && trouble.missing.front().item == act.item &&
           trouble.missing.front().verb == act.verb && !trouble.done_later.empty();
}

// Is it one more of the group? Then it is told, and mended, with the first.
bool joins(const Walk& walk, MovedUp& group, const Trouble& trouble, Diagnostic finding,
           std::vector<Diagnostic>& findings) {
    Diagnostic& first = findings[group.finding];
    if (group.to != trouble.mend_at || group.items.empty() || finding.edits.empty())
        return false;
    group.items.push_back(act_of(walk, trouble).item);
    first.message = fmt::format("{} are out of reach", names(walk, group.items));
    first.related.push_back({finding.primary, "nor can this"});
    first.help = "move them up";
    std::move(finding.edits.begin(), finding.edits.end(), std::back_inserter(first.edits));
    return true;
}

Diagnostic out_of_reach_here(const Walk& walk, const Trouble& trouble,
                             const bench::OutOfReach& reason) {
    Diagnostic finding = refused(
        walk, trouble, fmt::format("{} out of reach", item_is(walk, act_of(walk, trouble).item)));
    finding.label = "cannot be got at here";
    // What is laid between parts, or clamped, is not hidden by what presses it.
    const model::Item& item = walk.model.item(act_of(walk, trouble).item);
    const bool pressed = reason.because.known() && reason.because == item.declaration;
    const bool more = several(walk, reason.by);
    finding.why = fmt::format("{} {}", names(walk, reason.by),
                              pressed ? (more ? "press on it" : "presses on it")
                                      : (more ? "are in the way" : "is in the way"));
    if (reason.terminal.known())
        finding.why += fmt::format("; this is done where what it feeds lies open, as {}",
                                   names(walk, {reason.terminal}));
    if (reason.terminal.known())
        do_when_open(walk, trouble, finding);
    if (const auto early = too_early(walk, trouble))
        move_down(walk, *early, "put back already here", finding);
    if (reason.because.known())
        finding.related.push_back(
            {reason.because, pressed ? "lies under it" : "says what is in the way"});
    return finding;
}

void find_out_of_reach(const Walk& walk, std::vector<Diagnostic>& findings) {
    const ToldAsTooEarly told(walk);
    MovedUp group;
    each_refusal<bench::OutOfReach>(
        walk, [&](const Trouble& trouble, const bench::OutOfReach& reason) {
            if (told.covers(trouble))
                return;
            Diagnostic finding = out_of_reach_here(walk, trouble, reason);
            const bool up = moves_up(walk, trouble);
            if (up && group.by == reason.by && joins(walk, group, trouble, finding, findings))
                return;
            if (up)
                group = {trouble.mend_at, reason.by, {act_of(walk, trouble).item}, findings.size()};
            findings.push_back(std::move(finding));
        });
}

} // namespace

extern const Rule out_of_reach;
const Rule out_of_reach{"out-of-reach", "reach", Severity::error,
                        "work on what is still covered, or buried under another fastener",
                        find_out_of_reach};

} // namespace matchmark::check::rules
