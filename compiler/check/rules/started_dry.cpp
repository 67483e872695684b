// A machine set going before the fluid that it works in, or that it heats, is filled in again.
#include "check/troubles.hpp"

#include "model/run_out.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace matchmark::check::rules {

namespace {

using model::ItemId;

// Does the act let power on again, as it is on the assembled device?
bool sets_going(const Walk& walk, const bench::Act& act) {
    const model::Item& item = walk.model.item(act.item);
    const model::Kind& kind = walk.model.kind(item.kind);
    const model::StateId on = kind.set_first.front();
    return item.role == model::Role::energy && !kind.runs_out && !item.feeds.empty() &&
           model::contains(kind.live, on) && kind.verbs[act.verb].to == on;
}

// Is it hot while the machine runs, and cools by itself: a heating element?
bool gets_hot(const model::Kind& kind) {
    return !kind.hazards.empty() &&
           std::any_of(kind.verbs.begin(), kind.verbs.end(), [&](const model::Verb& verb) {
               return verb.waits &&
                      model::contains(verb.from, kind.set_first[kind.set_of[verb.to]]);
           });
}

// Of the vessel, what heats in it and what draws from it through a hose, what the supply feeds.
ItemId fed_part_of(const model::Model& model, ItemId fluid, const model::Item& supply) {
    const ItemId vessel = model.item(fluid).carrier;
    if (!vessel.known() || among(supply.feeds, vessel))
        return vessel;
    for (const ItemId part : model.item(vessel).carried) {
        if (among(supply.feeds, part) && gets_hot(model.kind_of(part)))
            return part;
    }
    for (const ItemId tie : model.item(vessel).ties) {
        if (!model.kind_of(fluid).runs_out || !model.kind_of(tie).lets_out)
            continue;
        for (const ItemId part : model::parts_behind(model, model.item(tie))) {
            if (among(supply.feeds, part))
                return part;
        }
    }
    return {};
}

// The event that fills it in again.
std::optional<std::size_t> filled_at(const Walk& walk, std::size_t on, ItemId fluid) {
    for (std::size_t at = on + 1; at < walk.events.size(); ++at) {
        const auto& act = walk.events[at].act;
        if (act && act->item == fluid && bench::present(walk.bench, walk.state_at(at + 1), fluid))
            return at;
    }
    return std::nullopt;
}

Diagnostic runs_dry(const Walk& walk, std::size_t on, ItemId fluid, ItemId part,
                    std::size_t filled) {
    const bench::Act act = *walk.events[on].act;
    Diagnostic finding =
        finding_at(walk, on,
                   fmt::format("{} on before {} is filled in", item_is(walk, act.item),
                               model::with_kind(walk.model, fluid)));
    finding.label = "runs dry";
    finding.related.push_back({place_of(walk, filled), "filled only here"});
    finding.why = fmt::format("{} has power and nothing in it", model::quoted(walk.model, part));
    const model::Action* action = walk.action(walk.events[on]);
    if (action != nullptr && !action->derived && action->targets.size() == 1) {
        mend_with(walk, finding, filled + 1, {act}, {action->line});
        if (!finding.edits.empty())
            finding.edits.push_back(remove_line(walk.sources, action->line));
        finding.help = "move it down";
    }
    return finding;
}

void find_started_dry(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t on = 0; on < walk.events.size(); ++on) {
        const auto& act = walk.events[on].act;
        if (!act || !sets_going(walk, *act))
            continue;
        for (std::uint32_t i = 0; i < walk.model.items.size(); ++i) {
            const ItemId fluid{i};
            if (walk.model.items[i].role != model::Role::fluid || !walk.bench.exists(fluid) ||
                bench::present(walk.bench, walk.state_at(on + 1), fluid))
                continue;
            const ItemId part = fed_part_of(walk.model, fluid, walk.model.item(act->item));
            const auto filled = part.known() ? filled_at(walk, on, fluid) : std::nullopt;
            if (filled)
                findings.push_back(runs_dry(walk, on, fluid, part, *filled));
        }
    }
}

} // namespace

extern const Rule started_dry;
const Rule started_dry{"started-dry", "needs", Severity::warning,
                       "power let on before the fluid that it works in is filled in again",
                       find_started_dry};

} // namespace matchmark::check::rules
