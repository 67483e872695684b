// A fluid filled in while the drain plug of its vessel is out.
#include "check/troubles.hpp"

#include "model/run_out.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::ItemId;

bool fills(const Walk& walk, const bench::Act& act) {
    const model::Kind& kind = walk.model.kind_of(act.item);
    return kind.role == model::Role::fluid &&
           model::contains(kind.present, kind.verbs[act.verb].to) &&
           (kind.verbs[act.verb].from & kind.present) == 0;
}

ItemId open_plug(const Walk& walk, std::size_t at, ItemId fluid) {
    const auto plugs = model::drain_plugs(walk.model, walk.model.item(fluid));
    const auto open = std::find_if(plugs.begin(), plugs.end(), [&](ItemId plug) {
        return walk.bench.exists(plug) && !bench::binds(walk.bench, walk.state_at(at), plug);
    });
    return open == plugs.end() ? ItemId{} : *open;
}

// The author's own line that puts the plug in later.
const model::Action* put_in_later(const Walk& walk, std::size_t at, ItemId plug) {
    for (std::size_t later = at + 1; later < walk.events.size(); ++later) {
        const auto& act = walk.events[later].act;
        const model::Action* action = walk.action(walk.events[later]);
        if (act && act->item == plug && action != nullptr && !action->derived &&
            bench::binds(walk.bench, walk.state_at(later + 1), plug))
            return action;
    }
    return nullptr;
}

Diagnostic runs_out_again(const Walk& walk, std::size_t at, ItemId plug) {
    const ItemId fluid = walk.events[at].act->item;
    const model::Kind& kind = walk.model.kind_of(plug);
    Diagnostic finding =
        finding_at(walk, at,
                   fmt::format("{} is filled in while {} out", model::with_kind(walk.model, fluid),
                               item_is(walk, plug)));
    finding.label = "runs out again";
    finding.related.push_back({walk.model.item(plug).span, "declared here"});
    finding.why = fmt::format("{} closes what it is filled into", model::quoted(walk.model, plug));
    const auto acts =
        bench::bring_to(walk.bench, walk.state_at(at), plug, kind.binds, wish_from(walk, at));
    const model::Action* later = put_in_later(walk, at, plug);
    if (acts && later != nullptr) {
        mend_with(walk, finding, at, *acts, {later->line});
        if (!finding.edits.empty())
            finding.edits.push_back(take_out(walk, later->line, *acts));
        finding.related.push_back({later->head, "done only here"});
        finding.help = "move it up";
    } else if (acts) {
        mend_with(walk, finding, at, *acts);
    }
    finding.help += fmt::format("{}if {} is above the level, say `lets nothing out` in its "
                                "declaration",
                                finding.help.empty() ? "" : "; ", model::quoted(walk.model, plug));
    return finding;
}

void find_filled_open(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const auto& act = walk.events[at].act;
        if (!act || !fills(walk, *act))
            continue;
        const ItemId plug = open_plug(walk, at, act->item);
        if (plug.known())
            findings.push_back(runs_out_again(walk, at, plug));
    }
}

} // namespace

extern const Rule filled_open;
const Rule filled_open{"filled-open", "needs", Severity::error,
                       "a fluid filled in while the drain plug of its vessel is out",
                       find_filled_open};

} // namespace matchmark::check::rules
