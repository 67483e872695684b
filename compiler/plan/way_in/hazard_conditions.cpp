// What an act waits for because of a danger: what it works on, and what it alone would lay open.
#include "bench/exposure.hpp"
#include "bench/isolation.hpp"
#include "plan/way_in/condition_nodes.hpp"

namespace matchmark::plan {

using model::contains;
using model::Item;
using model::ItemId;
using model::ItemRef;
using model::Kind;
using model::Role;
using model::StateId;
using model::StateSet;

bool Conditions::is_way_to_safety(const Task& task) const {
    const ItemId id = graph_.units[task.unit].item;
    const auto& hazards = model_.kind_of(id).hazards;
    return std::any_of(hazards.begin(), hazards.end(),
                       [&](const model::HazardUse& use) { return makes_safe(task, id, use.safe); });
}

bool Conditions::makes_safe(const Task& task, ItemId id, StateSet safe) const {
    if (graph_.units[task.unit].item != id)
        return false;
    const Kind& kind = model_.kind_of(id);
    for (std::size_t s = 0; s < kind.states.size(); ++s) {
        if (contains(safe, static_cast<StateId>(s)) && kind.set_of[s] == kind.set_of[task.to])
            return true;
    }
    return false;
}

// Hazards of what the task works on. One that counts only while its item can be reached is asked
// here if it always can.
void Conditions::add_touched_hazards(const Task& task, std::vector<NodeIndex>& all) {
    const ItemId id = graph_.units[task.unit].item;
    const auto& ends = model_.item(id).touches;
    const bool from_outside = model_.kind_of(id).verbs[task.verb].from_outside;
    const auto works_on = [&](ItemId part) {
        return part.known() && !from_outside && (part == id || among(ends, part));
    };
    for (const ItemId danger : dangers_) {
        const Item& item = model_.item(danger);
        const bool near_it =
            works_on(danger) || (!from_outside && bench::shares_vessel(model_, id, danger)) ||
            (item.reach.empty() && !from_outside && bench::frees(model_, id, item.carrier));
        for (const model::HazardUse& use : model_.kind(item.kind).hazards) {
            const bool met =
                id == danger || (bench::is_met_by_hand(item) && near_it &&
                                 !bench::is_needed_for_safety(model_, id, danger, use));
            const bool cuts = model_.item(id).role == Role::connector &&
                              model_.kind_of(id).set_of[task.to] == 0 &&
                              bench::inner_source(bench_, id, danger).known() &&
                              !bench::safe_under_power(model_.kind(item.kind), use.safe);
            if (met && !cuts && !makes_safe(task, danger, use.safe))
                all.push_back(in_states({danger, {}, {}}, use.safe,
                                        {ReasonSort::hazard, {}, danger, id, 0, use.span}));
        }
    }
}

// The tasks that alone lay `open` open have to find the hazard safe.
void Conditions::bar_openers(ItemId id, std::size_t use, ItemId open,
                             std::vector<std::vector<NodeIndex>>& needs) {
    const Item& part = model_.item(open);
    const ItemRef* bar = nullptr;
    const ItemId at = part.role == Role::part ? bench::place(bench_, start_, open)
                                              : bench::seat(bench_, start_, open);
    for (const model::ReachClause& clause : part.reach) {
        if (clause.ways.size() != 1)
            return;
        for (const ItemRef& ref : clause.ways.front()) {
            if (!bench_.exists(ref.item))
                continue;
            const Kind& kind = model_.kind_of(ref.item);
            const bool stands = model::is_tie(kind.role) ? bench::binds(bench_, start_, ref.item)
                                                         : bench::covers(bench_, start_, ref.item);
            if (!stands ||
                (kind.role == Role::part && bench::place(bench_, start_, ref.item) != at))
                continue;
            if (bar != nullptr && bar->item != ref.item)
                return;
            bar = &ref;
        }
    }
    if (bar == nullptr || graph_.units_of[bar->item.value].size() != 1)
        return;
    const Kind& kind = model_.kind_of(bar->item);
    const StateSet bad = model::is_tie(kind.role) ? kind.binds : kind.covers;
    const model::HazardUse& hazard = model_.kind_of(id).hazards[use];
    for (TaskIndex t = 0; t < graph_.tasks.size(); ++t) {
        const Task& task = graph_.tasks[t];
        const bool opens = graph_.units[task.unit].item == bar->item &&
                           graph_.units[task.unit].set == 0 && contains(bad, task.from) &&
                           !contains(bad, task.to);
        if (!opens || makes_safe(task, id, hazard.safe))
            continue;
        std::vector<NodeIndex> ways{in_states({id, {}, {}}, hazard.safe,
                                              {ReasonSort::hazard, {}, id, open, 0, hazard.span})};
        // What is gone already is not laid open, nor what is parted.
        const ActReason aside{ReasonSort::aside, {}, open, bar->item, 0, hazard.span};
        if (part.role == Role::part)
            ways.push_back(off(open, aside));
        else if (model::is_tie(part.role))
            ways.push_back(left({open, {}, {}}, model_.kind(part.kind).binds, aside));
        needs[t].push_back(add(NodeSort::any, std::move(ways)));
    }
}

void Conditions::add_opened_hazards(std::vector<std::vector<NodeIndex>>& needs) {
    for (std::uint32_t i = 0; i < model_.items.size(); ++i) {
        const ItemId id{i};
        const Kind& kind = model_.kind_of(id);
        const bool outside = std::any_of(kind.verbs.begin(), kind.verbs.end(),
                                         [](const auto& verb) { return verb.from_outside; });
        if (!bench_.exists(id) || (!outside && !model_.items[i].reach.empty()))
            continue;
        auto opened =
            model_.items[i].feeds.empty() ? std::vector<ItemId>{id} : model_.items[i].feeds.all();
        const auto& ends = model_.items[i].feeding->bare_ends;
        opened.insert(opened.end(), ends.begin(), ends.end());
        for (std::size_t use = 0; use < kind.hazards.size(); ++use) {
            if (!kind.hazards[use].on_reach)
                continue;
            for (const ItemId part : opened) {
                const bool there =
                    model::is_tie(model_.item(part).role) || bench::present(bench_, start_, part);
                if (bench_.exists(part) && there && !bench::reachable(bench_, start_, part))
                    bar_openers(id, use, part, needs);
            }
        }
    }
}

} // namespace matchmark::plan
