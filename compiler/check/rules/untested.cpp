// A part renewed, or a function disturbed, that no test proves after it is back.
#include "check/trials.hpp"
#include "check/troubles.hpp"

#include <fmt/format.h>

namespace matchmark::check::rules {

namespace {

std::string new_test(const Walk& walk, const Obligation& obligation) {
    if (!obligation.function.known()) {
        const model::Item& item = walk.model.item(obligation.item);
        return fmt::format("test prove-{} \"The {} works\"\n  proves {}\n", item.name, item.title,
                           item.name);
    }
    const model::Function& function = walk.model.functions[obligation.function.value];
    return fmt::format("test prove-{} \"{}\"\n  proves {}\n", function.name, function.title,
                       function.name);
}

Diagnostic too_early(const Walk& walk, const Proven& proven) {
    const model::Step& test = walk.step(walk.events[*proven.early]);
    Diagnostic finding = finding_at(walk, *proven.early,
                                    fmt::format("test `{}` comes before {} is back", test.name,
                                                name_of(walk, proven.obligation)));
    finding.label = "proves nothing here";
    finding.why = "what is tested must be the finished work";
    finding.help = "move the test to where it is back";
    return finding;
}

void find(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const Proven& proven : proofs(walk)) {
        if (proven.by)
            continue;
        if (proven.early) {
            findings.push_back(too_early(walk, proven));
            continue;
        }
        const Obligation& obligation = proven.obligation;
        const bool renewed = !obligation.function.known();
        Diagnostic finding =
            finding_at(walk, obligation.cause,
                       fmt::format("nothing tests {} after the work", name_of(walk, obligation)));
        if (const auto* action = walk.action(walk.events[obligation.cause]))
            finding.primary = action->head;
        finding.related.clear();
        finding.label = renewed ? "renewed here" : "disturbed here";
        finding.why = "a fault would show only after all is closed";
        if (obligation.function.known()) {
            finding.related.push_back(
                {walk.model.functions[obligation.function.value].span, "declared here"});
        }
        if (const auto at = last_chance(walk, obligation)) {
            finding.help = "add a test";
            finding.edits = insert_test(walk, *at, new_test(walk, obligation));
        }
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule untested;
const Rule untested{"untested", "tests", Severity::error,
                    "a renewed part or a disturbed function that nothing tests once it is back",
                    find};

} // namespace matchmark::check::rules
