// Lists the lines that end in `assumed`, so that whoever has the device open knows where to look.
#include "check/assumptions.hpp"

#include "check/rule.hpp"
#include "model/describe.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::check {

namespace rules {
extern const Rule assumed;
} // namespace rules

void find_assumed(const model::Model& model, FileId file, std::vector<Diagnostic>& findings) {
    std::vector<model::Assumption> lines;
    std::copy_if(model.assumptions.begin(), model.assumptions.end(), std::back_inserter(lines),
                 [&](const model::Assumption& line) { return line.line.file == file; });
    if (lines.empty())
        return;
    std::vector<std::string> items;
    for (const model::Assumption& line : lines) {
        std::string name = model::quoted(model, line.item);
        if (std::find(items.begin(), items.end(), name) == items.end())
            items.push_back(std::move(name));
    }
    Diagnostic finding;
    finding.rule = rules::assumed.name;
    finding.severity = rules::assumed.severity;
    finding.message =
        fmt::format("{} of the device {} assumed, about {}", model::counted(lines.size(), "line"),
                    lines.size() == 1 ? "is" : "are", model::list(items));
    finding.primary = lines.front().line;
    finding.label = "nobody has seen that it is so";
    for (std::size_t i = 1; i < lines.size(); ++i)
        finding.related.push_back({lines[i].line, "nor this"});
    finding.why = lines.size() == 1
                      ? "it follows from the order in which the device once came apart"
                      : "they follow from the order in which the device once came apart";
    finding.help = "look, then take the word `assumed` or the line away";
    findings.push_back(std::move(finding));
}

} // namespace matchmark::check
