// Works backwards from a refused act to what has to be done before it.
#include "bench/missing.hpp"

#include "bench/isolation.hpp"
#include "model/passing_on.hpp"

#include <algorithm>
#include <array>

namespace matchmark::bench {

using model::contains;
using model::in_set;
using model::Item;
using model::Kind;
using model::states_of_set;

namespace {

constexpr int deepest = 16;     // reasons behind reasons; real devices need about five
constexpr int most_acts = 4000; // tried in one search, so that a tangle of needs comes to an end

class Search {
public:
    Search(const Bench& bench, State state, const Wish& wish)
        : bench_(bench), state_(std::move(state)), wish_(wish) {}

    bool bring(ItemId id, const std::vector<std::uint16_t>& members, StateSet states);
    bool resolve(const Act& act, const Refusal& reason);
    std::vector<Act> acts;

private:
    struct Aim {
        ItemId item;
        StateSet states = 0;
    };

    bool bring_member(ItemId id, std::uint16_t member, StateSet states);
    bool follow(ItemId id, std::uint16_t member, const std::vector<std::uint16_t>& path);
    bool carry_out(const Act& act);
    bool unlive(ItemId source, ItemId fed);
    bool uncover(const std::vector<ItemId>& in_the_way);
    bool take_to_the_bench(const Act& act);
    bool seat_together(const Act& act, const NotSeated& reason);
    Act group_act(ItemId id, std::uint16_t member, std::uint16_t verb) const;
    std::vector<std::vector<std::uint16_t>> paths(ItemId id, std::uint16_t member,
                                                  StateSet states) const;

    const Bench& bench_;
    State state_;
    const Wish& wish_;
    std::vector<Aim> under_way_;
    int tried_ = 0;
};

// Verb sequences from the member's state to each of the states, those that the author expects
// first, then shortest first.
std::vector<std::vector<std::uint16_t>> Search::paths(ItemId id, std::uint16_t member,
                                                      StateSet states) const {
    const Kind& kind = bench_.model->kind_of(id);
    std::vector<std::vector<std::uint16_t>> wished;
    std::vector<std::vector<std::uint16_t>> others;
    for (unsigned set = 0; set < kind.set_count(); ++set) {
        const StateId start = state_of(bench_, state_, id, member, set);
        const StateSet wish = wish_(slot(*bench_.model, id, member, set));
        std::array<std::optional<std::vector<std::uint16_t>>, 64> reached;
        std::vector<StateId> queue{start};
        reached[start].emplace();
        for (std::size_t head = 0; head < queue.size(); ++head) {
            const StateId here = queue[head];
            if (contains(states, here))
                (contains(wish, here) ? wished : others).push_back(*reached[here]);
            for (std::size_t verb = 0; verb < kind.verbs.size(); ++verb) {
                const model::Verb& step = kind.verbs[verb];
                if (!contains(step.from, here) || reached[step.to])
                    continue;
                reached[step.to] = reached[here];
                reached[step.to]->push_back(static_cast<std::uint16_t>(verb));
                queue.push_back(step.to);
            }
        }
    }
    wished.insert(wished.end(), others.begin(), others.end());
    return wished;
}

// The act on every member that stands as this one does, so that a group is undone in one line.
Act Search::group_act(ItemId id, std::uint16_t member, std::uint16_t verb) const {
    const Item& item = bench_.model->item(id);
    const Kind& kind = bench_.model->kind(item.kind);
    const unsigned set = kind.set_of[kind.verbs[verb].to];
    const StateId stands = state_of(bench_, state_, id, member, set);
    Act act{id, verb, {}, true};
    for (std::uint16_t other = 0; other < item.count; ++other) {
        if (state_of(bench_, state_, id, other, set) != stands)
            continue;
        act.members.push_back(static_cast<std::uint16_t>(other + 1U));
    }
    if (act.members.size() == item.count)
        act.members.clear();
    return act;
}

bool Search::carry_out(const Act& act) {
    for (int round = 0; round < deepest; ++round) {
        if (++tried_ > most_acts)
            return false;
        const auto reason = refusal(bench_, state_, act);
        if (!reason) {
            perform(bench_, state_, act);
            acts.push_back(act);
            return true;
        }
        if (!resolve(act, *reason))
            return false;
    }
    return false;
}

bool Search::follow(ItemId id, std::uint16_t member, const std::vector<std::uint16_t>& path) {
    return std::all_of(path.begin(), path.end(),
                       [&](std::uint16_t verb) { return carry_out(group_act(id, member, verb)); });
}

bool Search::bring_member(ItemId id, std::uint16_t member, StateSet states) {
    const auto same = [&](const Aim& aim) { return aim.item == id && aim.states == states; };
    if (std::any_of(under_way_.begin(), under_way_.end(), same))
        return false;
    if (under_way_.size() >= deepest)
        return false;
    under_way_.push_back({id, states});
    bool done = false;
    for (const auto& path : paths(id, member, states)) {
        const State saved = state_;
        const std::size_t count = acts.size();
        done = follow(id, member, path);
        if (done)
            break;
        state_ = saved;
        acts.resize(count);
    }
    under_way_.pop_back();
    return done;
}

bool Search::bring(ItemId id, const std::vector<std::uint16_t>& members, StateSet states) {
    const Item& item = bench_.model->item(id);
    const std::size_t count = members.empty() ? item.count : members.size();
    for (std::size_t i = 0; i < count; ++i) {
        const auto member = static_cast<std::uint16_t>(members.empty() ? i : members[i] - 1U);
        bool there = false;
        for (unsigned set = 0; set < bench_.model->kind(item.kind).set_count(); ++set) {
            there = there || contains(states, state_of(bench_, state_, id, member, set));
        }
        if (!there && !bring_member(id, member, states))
            return false;
    }
    return true;
}

// By parting a connector of its way, or else by bringing the source itself out of its live state.
// What is cut from outside is cut there: its connectors are not parted before, unless they may be.
bool Search::unlive(ItemId source, ItemId fed) {
    const Item& item = bench_.model->item(source);
    struct Option {
        ItemId item;
        StateSet states;
        bool wished;
    };
    std::vector<Option> options;
    const auto offer = [&](ItemId id, StateSet bad) {
        const StateSet good = states_of_set(bench_.model->kind_of(id), 0) & ~bad;
        const StateSet wish = wish_(slot(*bench_.model, id, 0, 0));
        options.push_back({id, good, (wish & good) != 0});
    };
    const bool at_the_source = model::cut_from_outside(bench_.model->kind(item.kind));
    std::vector<ItemId> connectors = item.through;
    for (const ItemId connector : model::connectors_to(item, fed)) {
        if (model::is_on_its_line(item, connector, fed))
            connectors.push_back(connector);
    }
    for (const ItemId connector : connectors) {
        const bool isolates = !at_the_source || bench_.model->item(connector).safe_when_live;
        if (isolates && bench_.exists(connector))
            offer(connector, bench_.model->kind_of(connector).binds);
    }
    offer(source, bench_.model->kind_of(source).live);
    std::stable_sort(options.begin(), options.end(),
                     [](const Option& a, const Option& b) { return a.wished && !b.wished; });
    return std::any_of(options.begin(), options.end(),
                       [&](const Option& option) { return bring(option.item, {}, option.states); });
}

bool Search::uncover(const std::vector<ItemId>& in_the_way) {
    return std::all_of(in_the_way.begin(), in_the_way.end(), [&](ItemId id) {
        const Kind& kind = bench_.model->kind_of(id);
        const StateSet bad = model::is_tie(kind.role) ? kind.binds : kind.covers;
        return bring(id, {}, states_of_set(kind, 0) & ~bad);
    });
}

// What is worked on outside the device is reached once it is out with its carrier: when the author
// later expects that carrier out.
bool Search::take_to_the_bench(const Act& act) {
    const Model& model = *bench_.model;
    const Item& item = model.item(act.item);
    ItemId at = item.carrier.known() || item.touches.empty() ? item.carrier : item.touches.back();
    for (; at.known(); at = model.item(at).carrier) {
        const Kind& kind = model.kind_of(at);
        const StateSet out = states_of_set(kind, 0) & ~kind.present;
        if ((wish_(slot(model, at, 0, 0)) & out) == 0 || !present(bench_, state_, at))
            continue;
        const State saved = state_;
        const std::size_t count = acts.size();
        const auto reached = [&] {
            const auto now = refusal(bench_, state_, act);
            return !now || !std::holds_alternative<OutOfReach>(*now);
        };
        if (bring(at, {}, out) && reached())
            return true;
        state_ = saved;
        acts.resize(count);
    }
    return false;
}

// The innermost piece first: once it is in its carrier, they may already stand together, on the
// bench as well as in the device.
bool Search::seat_together(const Act& act, const NotSeated& reason) {
    const Model& model = *bench_.model;
    const bool connector = model.item(act.item).role == model::Role::connector;
    for (const ItemId id : innermost_first(model, reason.parts)) {
        const Kind& kind = model.kind_of(id);
        if (!bring(id, {}, connector ? kind.present : in_set(kind.set_first.front())))
            return false;
        const auto now = refusal(bench_, state_, act);
        if (!now || !std::holds_alternative<NotSeated>(*now))
            return true;
    }
    return true;
}

bool Search::resolve(const Act& act, const Refusal& reason) {
    const Model& model = *bench_.model;
    const auto clear = [&](ItemId id, StateSet bad) {
        return bring(id, {}, states_of_set(model.kind_of(id), 0) & ~bad);
    };
    if (const auto* wrong = std::get_if<WrongState>(&reason)) {
        const model::Verb& verb = model.kind_of(act.item).verbs[act.verb];
        return wrong->found != verb.to && bring(act.item, act.members, verb.from);
    }
    if (const auto* way = std::get_if<OutOfReach>(&reason))
        return take_to_the_bench(act) || uncover(way->by);
    if (const auto* need = std::get_if<UnmetNeed>(&reason)) {
        return bring(need->item, {}, need->states);
    }
    if (const auto* live = std::get_if<StillLive>(&reason))
        return unlive(live->source, live->fed);
    if (const auto* held = std::get_if<StillHeld>(&reason)) {
        return std::all_of(held->by.begin(), held->by.end(),
                           [&](ItemId id) { return clear(id, model.kind_of(id).binds); });
    }
    if (const auto* blocked = std::get_if<StillBlocked>(&reason)) {
        return clear(blocked->by, model.kind_of(blocked->by).blocks);
    }
    if (const auto* apart = std::get_if<NotSeated>(&reason))
        return seat_together(act, *apart);
    return false; // good for one use: nothing on the bench helps, only the supply list
}

} // namespace

std::vector<ItemId> innermost_first(const Model& model, std::vector<ItemId> parts) {
    const auto depth = [&](ItemId id) {
        int carriers = 0;
        for (ItemId at = model.item(id).carrier; at.known(); at = model.item(at).carrier)
            ++carriers;
        return carriers;
    };
    std::stable_sort(parts.begin(), parts.end(),
                     [&](ItemId a, ItemId b) { return depth(a) > depth(b); });
    return parts;
}

std::vector<Act> missing_for(const Bench& bench, const State& state, const Act& act,
                             const Refusal& reason, const Wish& wish) {
    Search search(bench, state, wish);
    if (!search.resolve(act, reason))
        return {};
    return std::move(search.acts);
}

std::optional<std::vector<Act>> bring_to(const Bench& bench, const State& state, ItemId item,
                                         StateSet states, const Wish& wish) {
    Search search(bench, state, wish);
    if (!search.bring(item, {}, states))
        return std::nullopt;
    return std::move(search.acts);
}

} // namespace matchmark::bench
