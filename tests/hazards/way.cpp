// Breadth first: the sets are small.
#include "hazards/way.hpp"

#include <algorithm>
#include <deque>
#include <set>

namespace matchmark::hazards {

namespace {

bool needs_met(const model::Kind& kind, const model::Verb& verb, const Standing& standing) {
    return std::all_of(kind.needs.begin(), kind.needs.end(), [&](const model::OwnNeed& need) {
        return need.verb != verb.name ||
               std::any_of(standing.begin(), standing.end(), [&](model::StateId state) {
                   return model::contains(need.states, state);
               });
    });
}

} // namespace

Standing assembled(const model::Kind& kind) { return kind.set_first; }

Way shortest_way(const model::Kind& kind, const Standing& start,
                 const std::function<bool(const model::Verb&)>& may_use,
                 const std::function<bool(const Standing&)>& is_there) {
    std::deque<Way> open{{true, {}, start}};
    std::set<Standing> seen{start};
    while (!open.empty()) {
        Way way = open.front();
        open.pop_front();
        if (is_there(way.end))
            return way;
        for (const model::Verb& verb : kind.verbs) {
            const std::size_t set = kind.set_of[verb.to];
            const model::StateId from = way.end[set];
            if (!may_use(verb) || !model::contains(verb.from, from) ||
                !needs_met(kind, verb, way.end))
                continue;
            Way next = way;
            next.end[set] = verb.to;
            next.strides.push_back({&verb, from});
            if (seen.insert(next.end).second)
                open.push_back(std::move(next));
        }
    }
    return {};
}

bool is_safe(const model::HazardUse& use, const Standing& standing) {
    return std::any_of(standing.begin(), standing.end(),
                       [&](model::StateId state) { return model::contains(use.safe, state); });
}

bool leads_to_safety(const model::Kind& kind, const model::HazardUse& use,
                     const model::Verb& verb) {
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        if (model::contains(use.safe, static_cast<model::StateId>(i)) &&
            kind.set_of[i] == kind.set_of[verb.to])
            return true;
    }
    return false;
}

} // namespace matchmark::hazards
