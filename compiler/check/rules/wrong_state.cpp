// A verb that the item's present state does not allow: pulling a ribbon that is still locked.
#include "check/dangers.hpp"
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// Done before: the line is one too many.
void mend_repeat(const Walk& walk, const Trouble& trouble, Diagnostic& finding) {
    const model::Action* action = walk.action(walk.events[trouble.event]);
    if (action == nullptr || action->derived || action->targets.size() != 1)
        return;
    finding.help = "remove the line";
    finding.edits = {remove_line(walk.sources, action->line)};
}

// Done before on the way in, and gone past since: nobody is told to undo it (to switch the supply
// on again) only so that it can be done once more.
void tell_earlier(const Walk& walk, const Trouble& trouble, Diagnostic& finding) {
    const bench::Act& act = act_of(walk, trouble);
    if (walk.step(walk.events[trouble.event]).section == model::Section::put_back)
        return;
    for (std::size_t i = 0; i < trouble.event; ++i) {
        const auto& earlier = walk.events[i].act;
        if (!earlier || earlier->item != act.item || earlier->verb != act.verb)
            continue;
        finding.edits.clear();
        finding.help = "take one of the two lines out";
        finding.related.push_back({place_of(walk, i), "done already here"});
        return;
    }
}

void find_wrong_state(const Walk& walk, std::vector<Diagnostic>& findings) {
    each_refusal<bench::WrongState>(walk, [&](const Trouble& trouble,
                                              const bench::WrongState& reason) {
        const bench::Act& act = act_of(walk, trouble);
        const model::Kind& kind = walk.model.kind_of(act.item);
        const model::Verb& verb = verb_of(walk, trouble);
        const bool repeat = reason.found == verb.to;
        const std::string danger = danger_on_the_way(walk.model, act.item, verb, reason.found);
        Diagnostic finding =
            refused(walk, trouble,
                    fmt::format("{}{} {} `{}`", danger, item_is(walk, act.item),
                                repeat ? "already" : "still", kind.states[reason.found]));
        finding.label =
            fmt::format("`{}` starts from {}", verb.name, model::states_in_words(kind, verb.from));
        finding.why = repeat ? fmt::format("there is nothing to `{}`", verb.name)
                             : fmt::format("`{}` now would force it", verb.name);
        finding.related.push_back({walk.model.item(act.item).span, "declared here"});
        if (repeat && trouble.missing.empty())
            mend_repeat(walk, trouble, finding);
        if (!repeat)
            tell_earlier(walk, trouble, finding);
        findings.push_back(std::move(finding));
    });
}

} // namespace

extern const Rule wrong_state;
const Rule wrong_state{"wrong-state", "state", Severity::error,
                       "a verb that the item's present state does not allow", find_wrong_state};

} // namespace matchmark::check::rules
