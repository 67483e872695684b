// A fluid filled in while the drain plug of its vessel is out, or let in by its supply while the
// vessel stands open.
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

bool is_filled_by(const Walk& walk, ItemId fluid, ItemId supply) {
    for (ItemId at = walk.model.item(fluid).carrier; at.known(); at = walk.model.item(at).carrier) {
        if (among(walk.model.item(at).fed_by, supply))
            return true;
    }
    return false;
}

// Is it undone or out, and has the fluid to be let out before that? Then it closes the vessel.
bool is_a_hole(const Walk& walk, std::size_t at, ItemId id, ItemId fluid) {
    const model::Item& item = walk.model.item(id);
    const model::StateSet filled = walk.model.kind_of(fluid).present;
    const bool lets_it_out =
        std::any_of(item.needs.begin(), item.needs.end(), [&](const model::Need& need) {
            return need.condition.item.item == fluid && (model::states_of(need) & filled) == 0;
        });
    if (!lets_it_out || !walk.bench.exists(id) || item.lets_nothing_out)
        return false;
    const bench::State& state = walk.state_at(at);
    return model::is_tie(item.role) ? !bench::binds(walk.bench, state, id)
                                    : !bench::present(walk.bench, state, id);
}

std::vector<ItemId> holes_of(const Walk& walk, std::size_t at, ItemId supply) {
    std::vector<ItemId> holes;
    for (std::uint32_t f = 0; f < walk.model.items.size(); ++f) {
        if (walk.model.items[f].role != model::Role::fluid ||
            !is_filled_by(walk, ItemId{f}, supply))
            continue;
        for (std::uint32_t i = 0; i < walk.model.items.size(); ++i) {
            if (is_a_hole(walk, at, ItemId{i}, ItemId{f}) && !among(holes, ItemId{i}))
                holes.push_back(ItemId{i});
        }
    }
    return holes;
}

// The event by which the last of them is closed again, in the author's own lines.
std::optional<std::size_t> closed_at(const Walk& walk, std::size_t on,
                                     const std::vector<ItemId>& holes, ItemId supply) {
    for (std::size_t at = on + 1; at < walk.events.size(); ++at) {
        const auto& act = walk.events[at].act;
        if (act && among(holes, act->item) && holes_of(walk, at + 1, supply).empty())
            return at;
    }
    return std::nullopt;
}

// Lets the act a supply run again, as it does when nothing is shut?
bool turns_on(const Walk& walk, const bench::Act& act) {
    const model::Kind& kind = walk.model.kind_of(act.item);
    return kind.runs_out && !walk.model.item(act.item).feeds.empty() &&
           kind.verbs[act.verb].to == kind.set_first.front();
}

void find_let_in_open(const Walk& walk, std::size_t on, std::vector<Diagnostic>& findings) {
    if (!turns_on(walk, *walk.events[on].act))
        return;
    const ItemId supply = walk.events[on].act->item;
    const auto holes = holes_of(walk, on + 1, supply);
    const auto closed = holes.empty() ? std::nullopt : closed_at(walk, on, holes, supply);
    if (!closed)
        return;
    const model::Action* action = walk.action(walk.events[on]);
    Diagnostic finding =
        finding_at(walk, on,
                   fmt::format("{} on while {} undone", item_is(walk, supply),
                               model::with_kind(walk.model, holes.front()) +
                                   (walk.model.item(holes.front()).count > 1 ? " are" : " is")));
    finding.label = "runs out again";
    finding.related.push_back({place_of(walk, *closed), "closed only here"});
    finding.why = fmt::format("{} fills what stands open", model::quoted(walk.model, supply));
    if (action != nullptr && !action->derived && action->targets.size() == 1) {
        mend_with(walk, finding, *closed + 1, {*walk.events[on].act}, {action->line});
        if (!finding.edits.empty())
            finding.edits.push_back(remove_line(walk.sources, action->line));
        finding.help = "move it down";
    }
    findings.push_back(std::move(finding));
}

void find_filled_open(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const auto& act = walk.events[at].act;
        if (act)
            find_let_in_open(walk, at, findings);
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
                       "a fluid filled in, or let in by its supply, while its vessel stands open",
                       find_filled_open};

} // namespace matchmark::check::rules
