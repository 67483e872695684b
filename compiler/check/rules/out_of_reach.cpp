// Work on what is still covered, or buried under another fastener.
#include "check/troubles.hpp"

#include <fmt/core.h>
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

void find_out_of_reach(const Walk& walk, std::vector<Diagnostic>& findings) {
    each_refusal<bench::OutOfReach>(
        walk, [&](const Trouble& trouble, const bench::OutOfReach& reason) {
            const bench::Act& act = act_of(walk, trouble);
            Diagnostic finding =
                refused(walk, trouble, fmt::format("{} out of reach", item_is(walk, act.item)));
            finding.label = "cannot be got at here";
            finding.why = fmt::format("{} {} in the way", names(walk, reason.by),
                                      several(walk, reason.by) ? "are" : "is");
            if (reason.terminal.known())
                finding.why += fmt::format("; this is done where what it feeds lies open, as {}",
                                           names(walk, {reason.terminal}));
            if (reason.terminal.known())
                do_when_open(walk, trouble, finding);
            if (reason.because.known())
                finding.related.push_back({reason.because, "says what is in the way"});
            findings.push_back(std::move(finding));
        });
}

} // namespace

extern const Rule out_of_reach;
const Rule out_of_reach{"out-of-reach", "reach", Severity::error,
                        "work on what is still covered, or buried under another fastener",
                        find_out_of_reach};

} // namespace matchmark::check::rules
