// Asks of each act, in the words of docs/semantics.md, what has to be so when it is done; z3 finds
// acts and times of least cost.
#include "plans/second_opinion.hpp"

#include "model/driven.hpp"
#include "model/passing_on.hpp"
#include "plans/asking.hpp"
#include "plans/solver.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <fmt/core.h>
#include <memory>

namespace matchmark::plans {

using model::contains;
using model::Item;
using model::ItemId;
using model::Kind;
using model::Role;
using model::StateSet;

std::string Asking::in_reach(const Subject& it) {
    if (it.verb.from_outside && !(it.item.role == Role::part && changes(it, it.kind.present)))
        return "true";
    std::vector<std::string> all;
    std::vector<std::string> terminals;
    for (const ItemId terminal : it.item.feeding->terminals) {
        if (formula_.bench.exists(terminal))
            terminals.push_back(formula_.reachable(terminal, it.now));
    }
    if (!terminals.empty())
        all.push_back(any_of(terminals));
    if (model::is_tie(it.item.role) && changes(it, it.kind.binds)) {
        for (const ItemId fastener : bench::pressing(formula_.bench, it.id))
            all.push_back(no(formula_.binds(fastener, it.now)));
    }
    if (it.item.role != Role::part || changes(it, it.kind.present)) {
        all.push_back(formula_.reach(it.id, true, it.goes_out ? it.id : ItemId{}, it.now));
    } else {
        const std::string here = formula_.present(it.id, it.now);
        all.push_back(any_of({all_of({here, formula_.reach(it.id, true, {}, it.now)}),
                              all_of({no(here), formula_.reach(it.id, false, {}, it.now)})}));
    }
    return all_of(all);
}

std::string Asking::needs(const Subject& it) {
    std::vector<std::string> all;
    for (const model::Need& need : it.item.needs) {
        const model::Verb* named = model::find_verb(it.kind, need.verb);
        // From state to state, in the order in which they are declared: outwards.
        const bool over = named != nullptr && it.deed.set == 0 && it.kind.set_of[named->to] == 0 &&
                          passes_over(*named, it.deed.from, it.deed.to);
        const bool asked =
            need.verb == it.verb.name ||
            (!need.alone && (over || (named != nullptr && model::inverts(*named, it.verb))));
        if (asked && formula_.bench.exists(need.condition.item.item))
            all.push_back(formula_.all_in(need.condition.item, model::states_of(need), it.now));
    }
    for (const model::OwnNeed& need : it.kind.needs) {
        if (need.verb != it.verb.name)
            continue;
        model::ItemRef self;
        self.item = it.id;
        self.members = formula_.things[it.deed.thing].members;
        all.push_back(formula_.all_in(self, need.states, it.now));
    }
    return all_of(all);
}

// What can be cut from outside is cut there, before a connector on its way is parted.
std::string Asking::cut(const Subject& it) {
    if (it.item.role != Role::connector || it.deed.set != 0)
        return "true";
    std::vector<std::string> all;
    for (std::uint32_t s = 0; s < model_.items.size(); ++s) {
        const Item& source = model_.items[s];
        const Kind& kind = model_.kind(source.kind);
        const bool outside = cut_outside(kind);
        const bool feeds = std::any_of(source.feeds.begin(), source.feeds.end(),
                                       [&](ItemId part) { return formula_.bench.exists(part); });
        if (!outside || !feeds || !among(source.through, it.id) ||
            !formula_.bench.exists(ItemId{s}))
            continue;
        std::vector<std::string> live{formula_.any_in({ItemId{s}, {}, {}}, kind.live, it.now)};
        for (const ItemId other : source.through) {
            if (other != it.id && formula_.bench.exists(other))
                live.push_back(formula_.binds(other, it.now));
        }
        all.push_back(no(all_of(live)));
    }
    return all_of(all);
}

namespace {

bool timed(const Kind& kind, unsigned set) {
    return std::any_of(kind.verbs.begin(), kind.verbs.end(), [&](const model::Verb& verb) {
        return kind.set_of[verb.to] == set && verb.to != kind.set_first[set] &&
               (verb.waits || verb.decays);
    });
}

// May the kind be left in this state, which a supply takes back?
bool comes_back(const Kind& kind, model::StateId state) {
    const unsigned set = kind.set_of[state];
    if (set == 0 && (kind.role != Role::energy || !timed(kind, set)))
        return false;
    bool safety = false;
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        for (const model::HazardUse& use : kind.hazards) {
            safety = safety || (kind.set_of[i] == set && i != kind.set_first[set] &&
                                contains(use.safe, static_cast<model::StateId>(i)));
        }
    }
    return safety && contains(kind.may_end, state) && state != kind.set_first[set];
}

// Cut from outside, and not by time alone where it may stay so.
bool supplies(const Kind& kind) {
    bool outside = false;
    bool at_once = false;
    bool stays = false;
    for (const model::Verb& verb : kind.verbs) {
        const bool cuts =
            verb.from_outside && (verb.from & kind.live) != 0 && !contains(kind.live, verb.to);
        outside = outside || cuts;
        at_once = at_once || (cuts && !verb.waits && !verb.decays);
    }
    for (std::size_t i = 0; i < kind.states.size(); ++i)
        stays = stays || (kind.set_of[i] == 0 && comes_back(kind, static_cast<model::StateId>(i)));
    return outside && (at_once || !stays) && !model::carries_matter(kind);
}

// What power may come to from the source: by carriers and connectors, as often as there is more.
std::vector<bool> may_come(const bench::Bench& on, const Item& source) {
    const auto& items = on.model->items;
    std::vector<bool> comes(items.size());
    for (const ItemId part : source.feeds)
        comes[part.value] = on.exists(part);
    for (bool more = true; more;) {
        more = false;
        const auto reach = [&](std::uint32_t i) {
            more = more || !comes[i];
            comes[i] = true;
        };
        for (std::uint32_t i = 0; i < items.size(); ++i) {
            const Item& item = items[i];
            if (!on.exists(ItemId{i}))
                continue;
            const bool everywhere = item.role == Role::energy && !item.carrier.known();
            const auto beside = [&](ItemId id) { return comes[id.value]; };
            const auto carried = item.role == Role::energy && item.carrier.known()
                                     ? on.model->item(item.carrier).carried.all()
                                     : std::vector<ItemId>{};
            if (everywhere || (item.carrier.known() && comes[item.carrier.value]) ||
                std::any_of(carried.begin(), carried.end(), beside))
                reach(i);
            const bool joined = item.role == Role::connector &&
                                std::any_of(item.touches.begin(), item.touches.end(),
                                            [&](ItemId part) { return comes[part.value]; });
            for (std::size_t n = 0; joined && n < item.touches.size(); ++n) {
                if (on.exists(item.touches[n]))
                    reach(item.touches[n].value);
            }
        }
    }
    return comes;
}

} // namespace

// What a supply would take back waits for the supply, on whatever way it may come.
std::string Asking::off(const Subject& it) {
    const bool flows = it.item.role == Role::energy || it.item.role == Role::fluid;
    if (!comes_back(it.kind, it.deed.to) || (flows && !it.verb.waits && !it.verb.decays))
        return "true";
    std::vector<std::string> all;
    for (std::uint32_t s = 0; s < model_.items.size(); ++s) {
        const Item& source = model_.items[s];
        if (ItemId{s} != it.id && !source.feeds.empty() && formula_.bench.exists(ItemId{s}) &&
            supplies(model_.kind(source.kind)) && may_come(formula_.bench, source)[it.id.value])
            all.push_back(no(formula_.live(ItemId{s}, it.now)));
    }
    return all_of(all);
}

// How the deed loosens at its place what the source drives, if that can be cut from outside.
void Asking::add_loosened(const Subject& it, ItemId from, std::vector<std::string>& ways) {
    const Item& source = model_.item(from);
    if (it.deed.set != 0 || !cut_outside(model_.kind(source.kind)))
        return;
    for (const ItemId part : model::driven_held_by(model_, it.item)) {
        if (!formula_.bench.exists(part) || !among(source.feeds, part))
            continue;
        std::vector<std::string> at_home{formula_.joined(from, part, it.now)};
        for (ItemId at = part; at.known(); at = model_.item(at).carrier)
            at_home.push_back(formula_.present(at, it.now));
        ways.push_back(all_of(at_home));
    }
}

// How the deed touches a part that the source feeds, or what that is in, or loosens what it drives.
std::string Asking::in_touch_with(const Subject& it, ItemId from, bool with_carriers) {
    if (it.verb.safe_when_live || it.item.safe_when_live)
        return "false";
    const Item& source = model_.item(from);
    std::vector<std::string> ways;
    add_loosened(it, from, ways);
    const bool safety = std::any_of(it.kind.hazards.begin(), it.kind.hazards.end(),
                                    [&](const auto& use) { return makes_safe(it, use.safe); });
    std::vector<ItemId> touched;
    const bool lets_out = it.item.role == Role::connector ? it.kind.lets_out : it.goes_out;
    const bool stays_dry = !lets_out && model::carries_matter(model_.kind(source.kind));
    if (from == it.id || among(source.through, it.id) || stays_dry)
        touched = {};
    else if (it.item.role == Role::connector && it.deed.set == 0)
        touched = it.item.touches;
    else if (it.goes_out)
        touched = it.could_move;
    else if (it.item.role == Role::part && safety)
        touched = {it.id};
    for (const ItemId part : touched) {
        // It is touched if it goes along; what it is in, as long as it is in it.
        std::vector<std::string> with_it{it.goes_out ? formula_.goes_with(part, it.id, it.now)
                                                     : std::string("true")};
        for (ItemId at = part; at.known(); at = model_.item(at).carrier) {
            const bool cut_here =
                !cut_outside(model_.kind(source.kind)) && model::is_on_its_line(source, it.id, at);
            if (among(source.feeds, at) && !cut_here)
                ways.push_back(all_of({formula_.joined(from, at, it.now), all_of(with_it)}));
            if (!with_carriers && it.goes_out && at == it.id)
                break;
            if (!(it.goes_out && at == it.id))
                with_it.push_back(formula_.present(at, it.now));
        }
    }
    return any_of(ways);
}

// No live source feeds a part that is touched, or what that is in.
std::string Asking::dead(const Subject& it) {
    if (it.verb.safe_when_live || it.item.safe_when_live)
        return "true";
    std::vector<std::string> all{cut(it), off(it)};
    for (std::uint32_t s = 0; s < model_.items.size(); ++s) {
        const ItemId from{s};
        if (!model_.item(from).feeds.empty() && formula_.bench.exists(from))
            all.push_back(no(all_of({formula_.on(from, it.now), in_touch_with(it, from, true)})));
    }
    return all_of(all);
}

// A washer between two parts that a pipe joint joins, too.
bool Asking::is_in_a_joint(ItemId bond) const {
    const auto& parts = model_.item(bond).touches;
    if (model_.item(bond).role != Role::bond || !model_.kind_of(bond).laid_first)
        return false;
    return std::any_of(model_.items.begin(), model_.items.end(), [&](const Item& joint) {
        const auto shared = std::count_if(joint.touches.begin(), joint.touches.end(),
                                          [&](ItemId part) { return among(parts, part); });
        const auto id = static_cast<std::uint32_t>(&joint - &model_.items.front());
        return joint.role == Role::connector && model_.kind(joint.kind).lets_out && shared > 1 &&
               formula_.bench.exists(ItemId{id});
    });
}

// The ring of a door that no screw shuts.
bool Asking::lies_in_its_groove(ItemId bond) const {
    if (model_.item(bond).role != Role::bond || !model_.kind_of(bond).lies_loose)
        return false;
    const auto pressed_by = bench::pressing(formula_.bench, bond);
    return std::none_of(pressed_by.begin(), pressed_by.end(),
                        [&](ItemId id) { return model_.item(id).role == Role::fastener; });
}

// No tie binds what moves to anything else; nothing blocks a part on its way out.
std::string Asking::loose(const Subject& it) {
    if (it.item.role != Role::part || it.deed.set != 0)
        return "true";
    std::vector<std::string> all;
    const auto moved = [&](ItemId part) {
        return among(it.could_move, part) ? formula_.goes_with(part, it.id, it.now)
                                          : std::string("false");
    };
    for (std::uint32_t t = 0; t < model_.items.size(); ++t) {
        const Item& tie = model_.items[t];
        if (!model::is_tie(tie.role) || !formula_.bench.exists(ItemId{t}) ||
            (!it.goes_out && (tie.role == Role::connector || is_in_a_joint(ItemId{t}) ||
                              lies_in_its_groove(ItemId{t}))))
            continue;
        std::vector<std::string> holds_moved;
        std::vector<std::string> holds_rest;
        for (const ItemId end : tie.touches) {
            if (!formula_.bench.exists(end))
                continue;
            holds_moved.push_back(moved(end));
            std::vector<std::string> stays{no(moved(end))};
            const Item& other = model_.item(end);
            if (model::is_tie(other.role) && !other.touches.empty()) {
                std::vector<std::string> along;
                for (const ItemId far : other.touches) {
                    if (formula_.bench.exists(far))
                        along.push_back(moved(far));
                }
                stays.push_back(no(all_of(along)));
            }
            holds_rest.push_back(all_of(stays));
        }
        all.push_back(no(
            all_of({any_of(holds_moved), any_of(holds_rest), formula_.binds(ItemId{t}, it.now)})));
    }
    for (const ItemId blocker : it.item.blocked_by) {
        if (it.goes_out && formula_.bench.exists(blocker))
            all.push_back(
                no(formula_.any_in({blocker, {}, {}}, model_.kind_of(blocker).blocks, it.now)));
    }
    return all_of(all);
}

std::string Asking::of(std::size_t number) {
    const Deed& deed = formula_.deeds[number];
    const ItemId id = formula_.things[deed.thing].item;
    const Item& item = model_.item(id);
    const Kind& kind = model_.kind(item.kind);
    Subject it{deed, {number, false, false}, id, item, kind, kind.verbs[deed.verb]};
    it.goes_out = item.role == Role::part && changes(it, kind.present);
    for (std::uint32_t i = 0; i < model_.items.size(); ++i) {
        const auto chain = formula_.chain(ItemId{i});
        if (formula_.bench.exists(ItemId{i}) && among(chain, id))
            it.could_move.emplace_back(ItemId{i});
    }
    // It is in the state from which the verb leads: brought there before, if not so from the start.
    std::vector<std::string> came;
    for (std::size_t d = 0; d < formula_.deeds.size(); ++d) {
        const Deed& other = formula_.deeds[d];
        if (other.thing == deed.thing && other.set == deed.set && other.to == deed.from)
            came.push_back(fmt::format("(and d{0} (< t{0} t{1}))", d, number));
    }
    const bool at_first = deed.from == kind.set_first[deed.set];
    return all_of({at_first ? std::string("true") : any_of(came), in_reach(it), needs(it), dead(it),
                   loose(it), no_danger(it)});
}

std::string formula_of(const bench::Bench& bench, const plan::WayInGoal& goal) {
    Formula formula(bench);
    Asking asking(formula);
    const std::size_t count = formula.deeds.size();
    for (std::size_t d = 0; d < count; ++d) {
        const std::string asked = asking.of(d);
        formula.text += fmt::format("(assert (=> d{} {}))\n", d, asked);
        const Deed& deed = formula.deeds[d];
        for (std::size_t o = 0; o < d; ++o) {
            const Deed& other = formula.deeds[o];
            if (other.thing == deed.thing && other.set == deed.set && other.from == deed.from)
                formula.text += fmt::format("(assert (not (and d{} d{})))\n", d, o);
        }
        const Thing& thing = formula.things[deed.thing];
        const model::Verb& verb = formula.model.kind_of(thing.item).verbs[deed.verb];
        const long long weight =
            std::llround(takes(formula.model, formula.model.kind_of(thing.item), verb) * 1000) *
            static_cast<long long>(thing.members.size());
        if (weight > 0)
            formula.text += fmt::format("(assert-soft (not d{}) :weight {} :id cost)\n", d, weight);
    }
    const Moment end{0, false, true};
    for (const ItemId id : goal.items) {
        const Kind& kind = formula.model.kind_of(id);
        const StateSet in = kind.role == Role::part    ? kind.present
                            : model::is_tie(kind.role) ? kind.binds
                                                       : kind.covers;
        const std::string met =
            goal.expose ? formula.reachable(id, end) : no(formula.any_in({id, {}, {}}, in, end));
        formula.text += fmt::format("(assert {})\n", met);
    }
    return formula.text + "(check-sat)\n(get-objectives)\n";
}

std::optional<Answer> second_opinion(const bench::Bench& bench, const plan::WayInGoal& goal,
                                     unsigned seconds) {
    const std::string output =
        output_of(fmt::format("z3 -smt2 -T:{} '{{}}'", seconds), formula_of(bench, goal));
    Answer answer;
    if (output.starts_with("unsat"))
        return answer;
    const std::size_t cost = output.find("(cost ");
    if (!output.starts_with("sat") || cost == std::string::npos)
        return std::nullopt;
    answer.possible = true;
    answer.cost = std::atoll(output.c_str() + cost + 6);
    return answer;
}

} // namespace matchmark::plans
