// A tool taken up again in a step, for work that could have been done while it was in hand.
#include "check/troubles.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::ResourceId;

// One line of a step, with the tool that it takes in hand.
struct Line {
    std::size_t from = 0; // its events
    std::size_t to = 0;   // not among them
    std::optional<ResourceId> tool;
    bool fasteners_alone = true;
};

// The order of what is emptied, proved or renewed is the author's, and so is that of the lines
// before and after it.
bool keeps_order(const Walk& walk, const Event& event) {
    if (!event.act)
        return true;
    const model::Role role = walk.model.item(event.act->item).role;
    return role == model::Role::fluid || role == model::Role::energy;
}

// Nothing for a line with two tools, or one that the author did not write in this file.
std::optional<Line> line_at(const Walk& walk, std::size_t from) {
    const Event& first = walk.events[from];
    const model::Action* action = walk.action(first);
    Line line;
    line.from = line.to = from;
    while (line.to < walk.events.size() && walk.events[line.to].step == first.step &&
           walk.events[line.to].action == first.action) {
        const Event& event = walk.events[line.to++];
        if (action == nullptr || keeps_order(walk, event))
            return std::nullopt;
        line.fasteners_alone =
            line.fasteners_alone && walk.model.item(event.act->item).role == model::Role::fastener;
    }
    if (action->derived || action->line.file != walk.guide().file)
        return std::nullopt;
    for (const ResourceId id : action->with) {
        if (walk.procedure.resources[id.value].sort != model::ResourceSort::tool)
            continue;
        if (line.tool)
            return std::nullopt;
        line.tool = id;
    }
    return line;
}

// Lines that stand together: of one step, without troubles of their own.
std::vector<std::vector<Line>> runs_of_lines(const Walk& walk) {
    std::vector<bool> troubled(walk.events.size() + 1, false);
    for (const Trouble& trouble : walk.troubles) {
        troubled[trouble.event] = true;
        troubled[trouble.mend_at] = true;
    }
    std::vector<std::vector<Line>> runs{{}};
    for (std::size_t at = 0; at < walk.events.size();) {
        const auto line = line_at(walk, at);
        const std::size_t next = line ? line->to : at + 1;
        const bool sound =
            line && std::none_of(troubled.begin() + static_cast<std::ptrdiff_t>(at),
                                 troubled.begin() + static_cast<std::ptrdiff_t>(next),
                                 [](bool is) { return is; });
        if (!sound || (at > 0 && walk.events[at - 1].step != walk.events[at].step))
            runs.emplace_back();
        if (sound)
            runs.back().push_back(*line);
        at = next;
    }
    return runs;
}

// Words between two lines are about the second, and would stay behind.
bool words_between(const Walk& walk, const Line& one, const Line& other) {
    const std::uint32_t from = walk.action(walk.events[one.from])->line.end;
    const std::uint32_t to = walk.action(walk.events[other.from])->line.begin;
    const auto& prose = walk.step(walk.events[one.from]).prose;
    return std::any_of(prose.begin(), prose.end(), [&](const model::Prose& words) {
        return words.span.begin >= from && words.span.begin < to;
    });
}

std::vector<bench::Act> acts_of(const Walk& walk, const Line& line) {
    std::vector<bench::Act> acts;
    for (std::size_t i = line.from; i < line.to; ++i)
        acts.push_back(*walk.events[i].act);
    return acts;
}

// A second turn of the same item is a pass over it, and has its place.
bool touched_between(const Walk& walk, const Line& held, const Line& again) {
    const auto acts = acts_of(walk, again);
    for (std::size_t i = held.from; i < again.from; ++i) {
        const model::ItemId item = walk.events[i].act->item;
        if (std::any_of(acts.begin(), acts.end(),
                        [&](const bench::Act& act) { return act.item == item; }))
            return true;
    }
    return false;
}

void report_tool_again(const Walk& walk, const Line& held, const Line& other, const Line& again,
                       std::vector<Diagnostic>& findings) {
    const auto acts = acts_of(walk, again);
    const model::Action& line = *walk.action(walk.events[again.from]);
    const std::string& tool = walk.procedure.resources[again.tool->value].name;
    Diagnostic finding = finding_at(walk, again.from,
                                    fmt::format("`{}` is put down and taken up again for {}", tool,
                                                model::with_kind(walk.model, acts.front().item)));
    finding.label = "could be done before it is put down";
    finding.why = "each change of tool takes time, and is a chance to come back with the wrong one";
    finding.related.push_back({walk.action(walk.events[held.from])->head, "in hand here"});
    finding.related.push_back(
        {walk.action(walk.events[other.from])->head,
         fmt::format("put down for `{}`", walk.procedure.resources[other.tool->value].name)});
    mend_with(walk, finding, held.to, acts, {line.line});
    if (!finding.edits.empty())
        finding.edits.push_back(remove_line(walk.sources, line.line));
    finding.help = "move it up";
    finding.safe = false; // the order may have a reason that the device's file does not tell
    findings.push_back(std::move(finding));
}

// Looks back for the line after which the tool was put down.
void find_in(const Walk& walk, const std::vector<Line>& lines, std::size_t at,
             std::vector<Diagnostic>& findings) {
    const Line& again = lines[at];
    const Line* other = nullptr;
    for (std::size_t i = at; i-- > 0;) {
        const Line& held = lines[i];
        if (held.tool && held.tool != again.tool)
            other = &held;
        if (held.tool != again.tool)
            continue;
        if (other != nullptr && held.fasteners_alone && !words_between(walk, held, again) &&
            !touched_between(walk, held, again) &&
            replay(walk, held.to, acts_of(walk, again), again.from))
            report_tool_again(walk, held, *other, again, findings);
        return;
    }
}

void find_tool_again(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const std::vector<Line>& lines : runs_of_lines(walk)) {
        for (std::size_t at = 0; at < lines.size(); ++at) {
            if (lines[at].tool && lines[at].fasteners_alone)
                find_in(walk, lines, at, findings);
        }
    }
}

} // namespace

extern const Rule tool_again;
const Rule tool_again{"tool-again", "tools", Severity::advice,
                      "a tool put down and taken up again, for what could be done before",
                      find_tool_again};

} // namespace matchmark::check::rules
