// Works out what an act would change.
#include "bench/attempt.hpp"

#include <algorithm>

namespace matchmark::bench {

using model::contains;
using model::Item;
using model::Kind;
using model::Verb;

std::vector<std::uint16_t> changing(const Bench& bench, const State& state, const Act& act) {
    const Item& item = bench.model->item(act.item);
    const Kind& kind = bench.model->kind(item.kind);
    const Verb& verb = kind.verbs[act.verb];
    const unsigned set = kind.set_of[verb.to];
    std::vector<std::uint16_t> members;
    const auto consider = [&](std::uint16_t member) {
        if (contains(verb.from, state_of(bench, state, act.item, member, set))) {
            members.push_back(member);
        }
    };
    if (act.members.empty()) {
        for (std::uint16_t member = 0; member < item.count; ++member)
            consider(member);
    } else {
        for (const auto member : act.members)
            consider(static_cast<std::uint16_t>(member - 1U));
    }
    return members;
}

Attempt attempt(const Bench& bench, const State& state, const Act& act) {
    const Item& item = bench.model->item(act.item);
    const Kind& kind = bench.model->kind(item.kind);
    const Verb& verb = kind.verbs[act.verb];
    Attempt at{bench, state, act, item, kind, verb, changing(bench, state, act)};
    at.set = kind.set_of[verb.to];
    at.first_set = at.set == 0;
    return at;
}

bool changes(const Attempt& at, model::StateSet states) {
    const bool after = contains(states, at.verb.to);
    return at.first_set &&
           std::any_of(at.members.begin(), at.members.end(), [&](std::uint16_t member) {
               const StateId from = state_of(at.bench, at.state, at.act.item, member, at.set);
               return contains(states, from) != after;
           });
}

} // namespace matchmark::bench
