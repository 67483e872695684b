// A step in which nothing is done and nothing is said.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

void find_empty_step(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const model::Step& step : walk.guide().steps) {
        const bool empty = step.actions.empty() && step.prose.empty() && step.photos.empty();
        // A test says with `proves` what is done. In a way back that is derived, a step's name
        // alone gives a derived step its title.
        const bool names_a_step =
            step.section == model::Section::put_back && walk.guide().derives_put_back;
        if (!empty || step.is_test || names_a_step)
            continue;
        Diagnostic finding;
        finding.message = fmt::format("step `{}` is empty", step.name);
        finding.primary = step.head;
        finding.label = "nothing is done here";
        finding.why = "the reader sees a number and a title, and looks for what to do";
        finding.help = "write what is done in it, or take the step away";
        finding.edits = {remove_declaration(walk.sources, step.body)};
        finding.safe = false; // its author may have been about to write it
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule empty_step;
const Rule empty_step{"empty-step", "prose", Severity::warning,
                      "a step without an action, a word or a photo", find_empty_step};

} // namespace matchmark::check::rules
