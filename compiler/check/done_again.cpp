// Looks back for what was done before.
#include "check/done_again.hpp"

#include <algorithm>

namespace matchmark::check {

using model::contains;

namespace {

// A thing that the verb measures, or brings to a torque, shows the same a second time; and a charge
// that was let out creeps back.
bool may_be_gone_over(const model::Item& item, const model::Kind& kind, const model::Verb& verb) {
    const bool tightens = model::takes_torque(item.role) && item.tightening &&
                          verb.to == kind.set_first.front() && contains(kind.binds, verb.to);
    return verb.limit.has_value() || verb.decays || tightens;
}

// Its supply makes it so, and the line says how long that takes: a boiler that heats up.
bool comes_of_itself(const model::Kind& kind, const model::Verb& verb) {
    return kind.role == model::Role::energy && verb.waits && verb.by_hand &&
           verb.to == kind.set_first[kind.set_of[verb.to]];
}

} // namespace

bool goes_over(const Walk& walk, std::size_t event, const bench::WrongState& reason) {
    const bench::Act& act = *walk.events[event].act;
    const model::Item& item = walk.model.item(act.item);
    const model::Kind& kind = walk.model.kind(item.kind);
    const model::Verb& verb = kind.verbs[act.verb];
    if (reason.found != verb.to)
        return false;
    const auto end = walk.events.begin() + static_cast<std::ptrdiff_t>(event);
    if (comes_of_itself(kind, verb)) {
        return std::any_of(walk.events.begin(), end, [&](const Event& earlier) {
            return earlier.act && earlier.act->item == act.item;
        });
    }
    return may_be_gone_over(item, kind, verb) &&
           std::any_of(walk.events.begin(), end, [&](const Event& earlier) {
               return earlier.act && earlier.act->item == act.item &&
                      kind.verbs[earlier.act->verb].to == verb.to;
           });
}

bool shuts_after_trial(const Walk& walk, std::size_t event, const bench::State& after,
                       const bench::Exposure& met) {
    const bench::Act& act = *walk.events[event].act;
    const model::Kind& kind = walk.model.kind_of(act.item);
    const model::Verb& verb = kind.verbs[act.verb];
    const bool shuts = kind.role == model::Role::part && verb.to == kind.set_first.front() &&
                       contains(kind.present, verb.to) && (verb.from & ~kind.present) == 0;
    if (!shuts || met.laid_open == met.item || bench::reachable(walk.bench, after, met.laid_open))
        return false;
    const model::StateSet safe = walk.model.kind_of(met.item).hazards[met.use].safe;
    for (std::size_t at = event; at-- > 0;) {
        if (bench::made_safe(walk.bench, walk.state_at(at), met.item, safe))
            return false;
        if (!walk.events[at].action)
            return true;
    }
    return false;
}

} // namespace matchmark::check
