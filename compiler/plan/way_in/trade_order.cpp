// Moves the acts one by one, and keeps the order that the bench allows.
#include "plan/way_in/trade_order.hpp"

#include "bench/dangerous.hpp"
#include "bench/lifted_after.hpp"
#include "model/comes_first.hpp"
#include "model/kind.hpp"

#include <algorithm>
#include <numeric>

namespace matchmark::plan {

namespace {

// Behind the part; or further on, when a charge that lies open with the part out is let off first.
constexpr std::size_t most_places = 8;

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

// The last act that parts one of the connectors beside it.
std::optional<std::size_t> last_beside(const model::Model& model, const WayIn& way,
                                       std::size_t earth) {
    const auto connectors = model::parted_before(model, way.acts[earth].act.item);
    std::optional<std::size_t> last;
    for (std::size_t i = 0; i < way.acts.size(); ++i) {
        const bench::Act& act = way.acts[i].act;
        const model::Kind& kind = model.kind_of(act.item);
        if (among(connectors, act.item) && model::lets_go(kind, kind.verbs[act.verb]))
            last = i;
    }
    return last;
}

// The act behind which this one belongs; none: it may stay.
std::optional<std::size_t> act_before(const bench::Bench& bench, const WayIn& way, std::size_t at) {
    const PlannedAct& planned = way.acts[at];
    const model::Kind& kind = bench.model->kind_of(planned.act.item);
    if (!model::lets_go(kind, kind.verbs[planned.act.verb]))
        return std::nullopt;
    if (kind.parted_last)
        return last_beside(*bench.model, way, at);
    const bool by_hand = planned.tool.empty() && planned.act.members.empty();
    return kind.lies_loose && by_hand ? part_comes_away(bench, way, at) : std::nullopt;
}

// How often the acts, in their order, ask for another one than the last that was asked for.
std::size_t changes_of(const std::vector<PlannedAct>& acts, std::string PlannedAct::*asked_for) {
    std::size_t count = 0;
    std::string held;
    for (const PlannedAct& planned : acts) {
        if ((planned.*asked_for).empty() || planned.*asked_for == held)
            continue;
        held = planned.*asked_for;
        ++count;
    }
    return count;
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

// Is the act done on an item of this role, for the sake of the same part as the one at `at`?
bool holds_the_same(const bench::Bench& bench, const WayIn& way, std::size_t at, std::size_t other,
                    model::Role role) {
    const ActReason& reason = way.reasons[at];
    const ActReason& others = way.reasons[other];
    return reason.sort == ReasonSort::holds && others.sort == ReasonSort::holds &&
           others.for_act == reason.for_act &&
           bench.model->item(way.acts[other].act.item).role == role;
}

// The fasteners that hold what the connector holds, too: the plug goes before the first that lets
// it.
std::vector<std::size_t> acts_behind(const bench::Bench& bench, const WayIn& way, std::size_t at) {
    std::vector<std::size_t> behind;
    if (bench.model->item(way.acts[at].act.item).role != model::Role::connector)
        return behind;
    for (std::size_t i = 0; i < at; ++i) {
        if (holds_the_same(bench, way, at, i, model::Role::fastener))
            behind.push_back(i);
    }
    return behind;
}

// The last connector on what the fastener holds, where that is undone by hand: a pin is drawn when
// no hose is left on its part.
std::optional<std::size_t> last_hose(const bench::Bench& bench, const WayIn& way, std::size_t at) {
    if (bench.model->item(way.acts[at].act.item).role != model::Role::fastener ||
        !way.acts[at].tool.empty())
        return std::nullopt;
    for (std::size_t i = way.acts.size(); i-- > at + 1;) {
        if (holds_the_same(bench, way, at, i, model::Role::connector))
            return i;
    }
    return std::nullopt;
}

// With the act in the place of the one at `to`; nothing where the bench does not allow it.
std::optional<WayIn> with_act_moved(const bench::Bench& bench, const WayIn& way, std::size_t from,
                                    std::size_t to) {
    std::vector<std::size_t> order(way.acts.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto place = [&](std::size_t at) {
        return order.begin() + static_cast<std::ptrdiff_t>(at);
    };
    if (from < to)
        std::rotate(place(from), place(from + 1), place(to + 1));
    else
        std::rotate(place(to), place(from), place(from + 1));
    WayIn moved = in_order(way, order);
    tell_the_acts(bench, moved.acts);
    if (!can_be_done(bench, moved.acts))
        return std::nullopt;
    moved.tool_changes = std::max(moved.tool_changes, changes_of(moved.acts, &PlannedAct::tool));
    return moved;
}

// A hose that asks for a spanner goes first where that costs no change of tool and no turning.
bool is_no_dearer(const WayIn& moved, const WayIn& way) {
    return moved.tool_changes <= way.tool_changes &&
           changes_of(moved.acts, &PlannedAct::face) <= changes_of(way.acts, &PlannedAct::face);
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

void put_in_trade_order(const bench::Bench& bench, WayIn& way) {
    for (std::size_t i = 0; i < way.acts.size(); ++i) {
        for (const std::size_t before : acts_behind(bench, way, i)) {
            const bool by_hand = way.acts[i].tool.empty();
            auto moved = with_act_moved(bench, way, i, before);
            if (moved && (by_hand || is_no_dearer(*moved, way))) {
                way = std::move(*moved);
                break;
            }
        }
    }
    for (std::size_t i = way.acts.size(); i-- > 0;) {
        const auto hose = last_hose(bench, way, i);
        auto moved = hose ? with_act_moved(bench, way, i, *hose) : std::nullopt;
        if (moved && is_no_dearer(*moved, way))
            way = std::move(*moved);
    }
    // From the last act to the first: what is moved shifts only what was looked at already.
    for (std::size_t i = way.acts.size(); i-- > 0;) {
        const auto behind = act_before(bench, way, i);
        if (!behind || *behind < i)
            continue;
        const std::size_t end = std::min(way.acts.size(), *behind + most_places);
        for (std::size_t at = *behind; at < end; ++at) {
            if (auto moved = with_act_moved(bench, way, i, at)) {
                way = std::move(*moved);
                break;
            }
        }
    }
}

} // namespace matchmark::plan
