// A test that is to be done when the device is not in the state that it asks for.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

std::string state_words(const model::Kind& kind, model::StateSet states) {
    std::vector<std::string> words;
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        if (model::contains(states, static_cast<model::StateId>(i))) {
            words.push_back("`" + kind.states[i] + "`");
        }
    }
    return model::list(words, "or");
}

// To make it so, what is back would have to come off again.
void misplaced(const Walk& walk, Diagnostic& finding) {
    if (walk.guide().derives_put_back) {
        finding.why = "nowhere on the way back does all that it asks for hold at one time";
        finding.help = "take things off in another order, or leave the condition out";
    } else {
        finding.why = "what is back would have to come off again";
        finding.help = "move the test to where it is so, or leave the condition out";
    }
}

void find(const Walk& walk, std::vector<Diagnostic>& findings) {
    each_objection<NotReady>(walk, [&](const Trouble& trouble, const NotReady& reason) {
        const Event& event = walk.events[trouble.event];
        const model::Action* measure = walk.action(event);
        const std::string wanted = state_words(walk.model.kind_of(reason.item), reason.states);
        const std::string what = measure != nullptr
                                     ? "this measurement"
                                     : fmt::format("test `{}`", walk.step(event).name);
        Diagnostic finding = refused(walk, trouble,
                                     fmt::format("{} asks for `{}` {}, which it is not here", what,
                                                 walk.model.item(reason.item).name, wanted));
        finding.label = "cannot be done here";
        finding.why = fmt::format("nothing before it leaves {} {}",
                                  model::with_kind(walk.model, reason.item), wanted);
        if (measure == nullptr && trouble.missing.empty())
            misplaced(walk, finding);
        finding.related.push_back({reason.condition, "the condition"});
        findings.push_back(std::move(finding));
    });
}

} // namespace

extern const Rule test_not_ready;
const Rule test_not_ready{"test-not-ready", "tests", Severity::error,
                          "a test or measurement whose condition does not hold where it stands",
                          find};

} // namespace matchmark::check::rules
