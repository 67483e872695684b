// Marks on a photo or positions on a face that do not add up to the count declared.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

void compare(const model::Item& item, std::size_t expected, std::size_t found, Span where,
             const char* what, std::vector<Diagnostic>& findings) {
    if (expected == found)
        return;
    Diagnostic finding;
    finding.message = fmt::format("`{}` is {} and has {}", item.name,
                                  model::counted(expected, "piece"), model::counted(found, what));
    finding.primary = where;
    finding.why = found < expected ? "one would be looked for in vain, or forgotten"
                                   : "one more is shown than there is";
    finding.related.push_back({item.span, "counted here"});
    finding.help = "count again";
    findings.push_back(std::move(finding));
}

void find_wrong_count(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const model::Item& item : walk.model.items) {
        if (!item.rare->positions ||
            item.rare->positions->points.empty()) // on which side, and no more
            continue;
        compare(item, item.count, item.rare->positions->points.size(), item.rare->positions->span,
                "position", findings);
    }
    for (const model::Step& step : walk.procedure.steps) {
        for (const model::Photo& photo : step.photos) {
            for (const model::PhotoMark& mark : photo.marks) {
                const model::Item& item = walk.model.item(mark.item.item);
                const std::size_t expected =
                    mark.item.members.empty() ? item.count : mark.item.members.size();
                compare(item, expected, mark.points.size(), mark.span, "mark", findings);
            }
        }
    }
}

} // namespace

extern const Rule wrong_count;
const Rule wrong_count{"wrong-count", "counts", Severity::error,
                       "marks or positions that do not add up to the count declared",
                       find_wrong_count};

} // namespace matchmark::check::rules
