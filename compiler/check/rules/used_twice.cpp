// A seal, strip or pin that is good for one use, put back as it came off.
#include "check/troubles.hpp"

#include "model/fitting.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// By a spare on the list, or else by a supply added to the list or named in the line.
void mend_used_twice(const Walk& walk, const Trouble& trouble, Diagnostic& finding,
                     model::ItemId id) {
    const auto& resources = walk.procedure.resources;
    const model::Item& item = walk.model.item(id);
    const model::Action* action = walk.action(walk.events[trouble.event]);
    const auto serving = model::serving(walk.model, resources, id);
    if (serving.empty()) {
        finding.help = "add it to what the guide needs";
        finding.edits = {add_to_head(walk, fmt::format("supply {}-new \"{}\", {} for {}", item.name,
                                                       item.title, item.count, item.name))};
        return;
    }
    const model::Resource& first = resources[serving.front().value];
    if (action == nullptr || action->derived)
        return;
    if (first.sort == model::ResourceSort::spare) {
        finding.help = "add this line before it";
        finding.edits = insert_before(walk, trouble.event,
                                      {fmt::format("replace {} with {}", item.name, first.name)});
    } else if (action->with.empty() && action->targets.size() == 1) {
        const Span target = action->targets.front().ref.span;
        finding.help = "name the supply";
        finding.edits = {{{target.file, target.end, target.end}, " with " + first.name}};
    } else if (action->targets.size() == 1) {
        finding.help = fmt::format("name `{}` after `with`", first.name);
        const std::string line(walk.sources.slice(action->line));
        const auto with = line.find(" with ");
        if (with == std::string::npos)
            return;
        const auto at = static_cast<std::uint32_t>(action->line.begin + with + 6);
        finding.edits = {{{action->line.file, at, at}, first.name + ", "}};
    }
}

void find_used_twice(const Walk& walk, std::vector<Diagnostic>& findings) {
    each_refusal<bench::UsedTwice>(walk, [&](const Trouble& trouble, const bench::UsedTwice&) {
        const bench::Act& act = act_of(walk, trouble);
        Diagnostic finding =
            finding_at(walk, trouble.event,
                       fmt::format("{} {} back used", model::with_kind(walk.model, act.item),
                                   walk.model.item(act.item).count > 1 ? "go" : "goes"));
        finding.label = "renewed by nothing here";
        finding.why = "it is good for one use, and was parted";
        const model::Item& item = walk.model.item(act.item);
        const model::Kind& kind = walk.model.kind(item.kind);
        if (kind.span.known())
            finding.related.push_back({item.span, "good for one use"});
        mend_used_twice(walk, trouble, finding, act.item);
        findings.push_back(std::move(finding));
    });
}

} // namespace

extern const Rule used_twice;
const Rule used_twice{"used-twice", "one use", Severity::error,
                      "what is good for one use, put back without being renewed from the list",
                      find_used_twice};

} // namespace matchmark::check::rules
