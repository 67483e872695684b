// Moves the acts one by one, and keeps what the bench allows.
#include "plan/way_in/loose_last.hpp"

#include "bench/dangerous.hpp"
#include "bench/lifted_after.hpp"
#include "model/kind.hpp"

#include <algorithm>
#include <numeric>

namespace matchmark::plan {

namespace {

bool takes_off_loose(const model::Model& model, const PlannedAct& planned) {
    const model::Kind& kind = model.kind_of(planned.act.item);
    return kind.lies_loose && planned.tool.empty() && planned.act.members.empty() &&
           model::lets_go(kind, kind.verbs[planned.act.verb]);
}

void tell_the_acts(const bench::Bench& bench, std::vector<PlannedAct>& acts) {
    std::vector<bench::Act*> in_order;
    for (PlannedAct& planned : acts)
        in_order.push_back(&planned.act);
    bench::note_lifted_after(bench, in_order);
}

bool can_be_done(const bench::Bench& bench, const std::vector<PlannedAct>& acts) {
    const bench::Dangers dangers = bench::dangers(bench);
    bench::State state = dangers.start;
    return std::none_of(acts.begin(), acts.end(), [&](const PlannedAct& planned) {
        const bench::State before = state;
        return bench::apply(bench, state, planned.act) ||
               bench::exposure(bench, before, state, planned.act, dangers);
    });
}

// The act for whose sake the seal is taken off; where that is the goal, the one that takes away
// what lies over it.
std::optional<std::size_t> part_comes_away(const bench::Bench& bench, const WayIn& way,
                                           std::size_t seal) {
    const ActReason& reason = way.reasons[seal];
    if (reason.sort == ReasonSort::holds)
        return reason.for_act;
    const model::ItemId over = bench::part_over(bench, way.acts[seal].act.item);
    for (std::size_t i = 0; i < way.acts.size() && over.known(); ++i) {
        if (reason.sort == ReasonSort::goal && way.acts[i].act.item == over)
            return i;
    }
    return std::nullopt;
}

// The acts and their reasons, as they stand in `order`.
WayIn in_order(const WayIn& way, const std::vector<std::size_t>& order) {
    WayIn moved = way;
    std::vector<std::size_t> place(order.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        place[order[i]] = i;
    for (std::size_t i = 0; i < order.size(); ++i) {
        moved.acts[i] = way.acts[order[i]];
        moved.reasons[i] = way.reasons[order[i]];
        if (auto& for_act = moved.reasons[i].for_act)
            for_act = place[*for_act];
    }
    return moved;
}

} // namespace

WayInGoal with_what_lies_over(const bench::Bench& bench, WayInGoal goal) {
    for (std::size_t i = 0; i < goal.items.size() && !goal.expose; ++i) {
        const model::ItemId part = bench::part_over(bench, goal.items[i]);
        if (part.known() && !among(goal.items, part))
            goal.items.push_back(part);
    }
    return goal;
}

void put_loose_last(const bench::Bench& bench, WayIn& way) {
    const model::Model& model = *bench.model;
    std::vector<std::size_t> order(way.acts.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    for (std::size_t i = way.acts.size(); i-- > 0;) {
        const auto away = part_comes_away(bench, way, i);
        if (!away || !takes_off_loose(model, way.acts[i]))
            continue;
        // Acts behind this one may have been moved already: places count, not numbers.
        const auto from = std::find(order.begin(), order.end(), i);
        const auto part = std::find(from, order.end(), *away);
        if (part != order.end())
            std::rotate(from, from + 1, part + 1);
    }
    if (std::is_sorted(order.begin(), order.end()))
        return;
    WayIn moved = in_order(way, order);
    tell_the_acts(bench, moved.acts);
    if (can_be_done(bench, moved.acts))
        way = std::move(moved);
}

} // namespace matchmark::plan
