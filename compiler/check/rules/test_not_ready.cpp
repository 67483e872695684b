// A test that is to be done when the device is not in the state that it asks for.
#include "check/troubles.hpp"

#include <fmt/format.h>

namespace matchmark::check::rules {

namespace {

void find(const Walk& walk, std::vector<Diagnostic>& findings) {
    each_objection<NotReady>(walk, [&](const Trouble& trouble, const NotReady& reason) {
        const model::Step& test = walk.step(walk.events[trouble.event]);
        const model::ItemId item = reason.condition.item.item;
        const std::string& state = walk.model.kind_of(item).states[reason.condition.state];
        Diagnostic finding = refused(walk, trouble,
                                     fmt::format("test `{}` asks for `{}` {}, which it is not here",
                                                 test.name, walk.model.item(item).name, state));
        finding.label = "cannot be done here";
        finding.why = fmt::format("nothing before it leaves {} {}",
                                  model::with_kind(walk.model, item), state);
        finding.related.push_back({reason.condition.span, "the condition"});
        findings.push_back(std::move(finding));
    });
}

} // namespace

extern const Rule test_not_ready;
const Rule test_not_ready{"test-not-ready", "tests", Severity::error,
                          "a test whose `when` does not hold where it stands", find};

} // namespace matchmark::check::rules
