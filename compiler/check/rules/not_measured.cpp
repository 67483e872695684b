// A wear limit from the book that the work lays open, and nobody measures.
#include "check/troubles.hpp"
#include "check/wear_limits.hpp"

#include "model/fitting.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// A spare that nothing uses was most likely meant for when the limit is passed.
std::string otherwise(const Walk& walk) {
    for (std::uint32_t i = 0; i < walk.model.items.size(); ++i) {
        for (const auto& spare : unused_for(walk, model::ItemId{i})) {
            return fmt::format(", else replace {} with {}", walk.model.items[i].name, spare);
        }
    }
    return {};
}

void report_not_measured(const Walk& walk, const DueLimit& found,
                         std::vector<Diagnostic>& findings) {
    const model::ItemId item = found.item;
    const model::WearLimit& limit = *found.limit;
    const std::size_t due = found.from;
    Diagnostic finding = finding_at(
        walk, due - 1,
        fmt::format("`{}` of {} is not measured", limit.name, model::with_kind(walk.model, item)));
    if (const auto* action = walk.action(walk.events[due - 1]); action && !action->derived)
        finding.primary = action->head;
    finding.related.clear();
    finding.label = "can be measured from here on";
    finding.why = fmt::format("the book asks for {}", to_text(limit.limit));
    finding.related.push_back({limit.span, "the limit"});
    std::string line = fmt::format("measure {} {} {}", walk.model.item(item).name, limit.name,
                                   to_text(limit.limit));
    line += with_unused_tools(walk);
    line += otherwise(walk);
    for (std::size_t at = walk.events.size() + 1; at-- > due;) {
        if (!measurable(walk, walk.state_at(at), item, limit))
            continue;
        finding.edits = insert_at(walk, at, {line});
        finding.help =
            finding.edits.empty() ? fmt::format("add `{}` to a step", line) : "add this line";
        if (!finding.edits.empty())
            break;
    }
    findings.push_back(std::move(finding));
}

void find_not_measured(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const DueLimit& due : unmeasured(walk))
        report_not_measured(walk, due, findings);
}

} // namespace

extern const Rule not_measured;
const Rule not_measured{
    "not-measured", "needs", Severity::error,
    "a limit declared on an item that the work lays open, and that is not measured",
    find_not_measured};

} // namespace matchmark::check::rules
