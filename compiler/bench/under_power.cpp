// Follows power to the parts that an act touches, or loosens what is driven by it.
#include "bench/under_power.hpp"

#include "bench/isolation.hpp"
#include "bench/power.hpp"
#include "model/driven.hpp"
#include "model/passing_on.hpp"

#include <algorithm>

namespace matchmark::bench {

using model::contains;
using model::Item;
using model::Role;

namespace {

// Is the verb one of those that make the item safe, or take that back?
bool makes_safe(const Attempt& at) {
    for (const model::HazardUse& use : at.kind.hazards) {
        for (std::size_t i = 0; i < at.kind.states.size(); ++i) {
            if (contains(use.safe, static_cast<StateId>(i)) && at.kind.set_of[i] == at.set)
                return true;
        }
    }
    return false;
}

enum class Moved : unsigned char { with_what_it_is_in, alone };

// The parts that the act touches electrically: a connector's, those that go in or out, or the one
// that is made safe; and what carries them.
std::vector<ItemId> touched_parts(const Attempt& at, Moved moved = Moved::with_what_it_is_in) {
    std::vector<ItemId> touched;
    const bool passes = at.item.role == Role::part && changes(at, at.kind.present);
    if (at.item.role == Role::connector && at.first_set)
        touched = at.item.touches;
    else if (passes)
        touched = moved_with(at.bench, at.state, at.act.item);
    else if (at.item.role == Role::part && makes_safe(at))
        touched = {at.act.item};
    if (passes && moved == Moved::alone)
        return touched;
    for (std::size_t i = 0; i < touched.size(); ++i) {
        const ItemId carrier = at.bench.model->item(touched[i]).carrier;
        const bool in_it =
            (passes && touched[i] == at.act.item) || present(at.bench, at.state, touched[i]);
        if (carrier.known() && in_it && !among(touched, carrier))
            touched.push_back(carrier);
    }
    return touched;
}

// Do the connectors bind behind which the source feeds the part?
bool comes_through(const Bench& bench, const State& state, const Item& source, ItemId part) {
    const auto connectors = model::connectors_to(source, part);
    return std::all_of(connectors.begin(), connectors.end(), [&](ItemId connector) {
        return !bench.exists(connector) || binds(bench, state, connector);
    });
}

// What feeds any of them, in order of declaration.
std::vector<ItemId> sources_of_parts(const Model& model, const std::vector<ItemId>& parts) {
    std::vector<ItemId> sources;
    for (const ItemId part : parts) {
        const auto& feeding = model.item(part).fed_by;
        sources.insert(sources.end(), feeding.begin(), feeding.end());
    }
    std::sort(sources.begin(), sources.end());
    sources.erase(std::unique(sources.begin(), sources.end()), sources.end());
    return sources;
}

// The driven parts that the act loosens or fastens at their place.
std::vector<ItemId> loosened(const Attempt& at) {
    std::vector<ItemId> parts;
    if (!at.first_set)
        return parts;
    for (const ItemId part : model::driven_held_by(*at.bench.model, at.item)) {
        if (at.bench.exists(part) && !place(at.bench, at.state, part).known())
            parts.push_back(part);
    }
    return parts;
}

// Does the source drive the part, and can it be cut from outside? Where nobody can cut a source
// from outside, it may be needed to get at it.
bool drives(const Attempt& at, ItemId id, ItemId part) {
    const Item& source = at.bench.model->item(id);
    return model::cut_from_outside(at.bench.model->kind(source.kind)) &&
           comes_through(at.bench, at.state, source, part);
}

// Water is let out by a pipe joint, and by a part that comes out; wires and hands may come near.
bool stays_dry(const Attempt& at, const Item& source) {
    if (!model::carries_matter(at.bench.model->kind(source.kind)))
        return false;
    return at.item.role == Role::connector ? !at.kind.lets_out : !changes(at, at.kind.present);
}

// Which of the touched parts the source feeds, through what binds.
ItemId fed_part(const Attempt& at, ItemId id, const std::vector<ItemId>& touched) {
    const Item& source = at.bench.model->item(id);
    if (id == at.act.item || among(source.through, at.act.item) || stays_dry(at, source))
        return {};
    const bool at_the_source = model::cut_from_outside(at.bench.model->kind(source.kind));
    for (const ItemId part : touched) {
        const bool isolates = !at_the_source && model::is_on_its_line(source, at.act.item, part);
        if (!isolates && among(source.feeds, part) &&
            comes_through(at.bench, at.state, source, part))
            return part;
    }
    return {};
}

// What a supply drives is not loosened or tightened at its place while the supply is on: the bolt
// of a blade.
std::optional<StillLive> still_driven(const Attempt& at) {
    for (const ItemId part : loosened(at)) {
        for (const ItemId source : at.bench.model->item(part).fed_by) {
            if (is_live(at.bench, at.state, source) && drives(at, source, part))
                return StillLive{source, part};
        }
    }
    return std::nullopt;
}

bool is_harmless(const Attempt& at) { return at.verb.safe_when_live || at.item.safe_when_live; }

} // namespace

std::optional<StillLive> still_live(const Attempt& at) {
    if (is_harmless(at))
        return std::nullopt;
    if (at.item.role == Role::connector && at.first_set) {
        if (auto reason = live_through(at.bench, at.state, at.act.item))
            return reason;
    }
    if (auto reason = still_driven(at))
        return reason;
    const std::vector<ItemId> touched = touched_parts(at);
    for (const ItemId id : sources_of_parts(*at.bench.model, touched)) {
        if (!is_live(at.bench, at.state, id))
            continue;
        if (const ItemId part = fed_part(at, id, touched); part.known())
            return StillLive{id, part};
    }
    return supply_still_on(at.bench, at.state, at.act);
}

bool would_be_live(const Bench& bench, const State& state, const Act& act, ItemId source) {
    const Attempt at = attempt(bench, state, act);
    if (is_harmless(at) || !is_joined(bench, state, source))
        return false;
    const std::vector<ItemId> driven = loosened(at);
    const auto fed = [&](ItemId part) { return among(bench.model->item(part).fed_by, source); };
    return std::any_of(driven.begin(), driven.end(),
                       [&](ItemId part) { return fed(part) && drives(at, source, part); }) ||
           fed_part(at, source, touched_parts(at, Moved::alone)).known();
}

} // namespace matchmark::bench
