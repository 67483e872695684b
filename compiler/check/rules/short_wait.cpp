// A danger that passes by itself, and is given far less time than it usually takes.
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

// The project's own rule: devices of one kind differ by that much, and their makers say so.
constexpr double far_less = 0.5;

// Does it lead to safety, or a part of the way: a boiler cools before it is relieved?
bool makes_safe(const model::Kind& kind, const model::Verb& verb) {
    const unsigned set = kind.set_of[verb.to];
    return verb.to != kind.set_first[set] &&
           std::any_of(kind.hazards.begin(), kind.hazards.end(), [&](const auto& hazard) {
               return (hazard.safe & model::states_of_set(kind, set)) != 0;
           });
}

// Nothing when the line gives no time, or time enough; or when what is measured decides.
const model::Quantity* usual_wait(const model::Model& model, const model::Action& action) {
    if (action.sort != model::ActionSort::verb || !action.duration || !action.with.empty() ||
        action.targets.empty())
        return nullptr;
    const model::Target& target = action.targets.front();
    const model::Kind& kind = model.kind_of(target.ref.item);
    const model::Verb& verb = kind.verbs[target.verb];
    if (!verb.waits || !makes_safe(kind, verb) ||
        action.duration->base >= verb.waits->base * far_less)
        return nullptr;
    return &*verb.waits;
}

void find_short_wait(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const Event& event = walk.events[at];
        const model::Action* action = walk.action(event);
        if (action == nullptr || !event.act || event.act->item != action->targets.front().ref.item)
            continue;
        const model::Quantity* usual = usual_wait(walk.model, *action);
        if (usual == nullptr)
            continue;
        const model::Kind& kind = walk.model.kind_of(event.act->item);
        const model::Verb& verb = kind.verbs[event.act->verb];
        Diagnostic finding =
            finding_at(walk, at,
                       fmt::format("{} is given {} to `{}`, and usually takes {}",
                                   model::with_kind(walk.model, event.act->item),
                                   to_text(*action->duration), verb.name, to_text(*usual)));
        finding.label = "it may still be there";
        finding.why = "whoever trusts the time touches it too soon";
        finding.related.push_back({walk.model.item(event.act->item).span, "declared here"});
        finding.help = fmt::format("write `for {}`, or measure it `with` a tool", to_text(*usual));
        if (const auto edit = reworded(walk, *action, to_text(*action->duration), to_text(*usual)))
            finding.edits = {*edit};
        finding.safe = false; // the maker may have measured it
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule short_wait;
const Rule short_wait{"short-wait", "hazard", Severity::warning,
                      "a danger that passes by itself given far less time than it usually takes",
                      find_short_wait};

} // namespace matchmark::check::rules
