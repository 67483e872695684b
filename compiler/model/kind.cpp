// Looks into kinds: their verbs, the way back, their states.
#include "model/kind.hpp"

#include <algorithm>

namespace matchmark::model {

bool lets_go(const Kind& kind, const Verb& verb) {
    return kind.set_of[verb.to] == 0 && (verb.from & kind.binds) != 0 &&
           !contains(kind.binds, verb.to);
}

bool cut_from_outside(const Kind& kind) {
    return std::any_of(kind.verbs.begin(), kind.verbs.end(), [&](const Verb& verb) {
        return verb.from_outside && (verb.from & kind.live) != 0 && !contains(kind.live, verb.to);
    });
}

bool comes_to_its_place(const Kind& kind, const Verb& verb) {
    if (kind.set_of[verb.to] != 0 || !contains(kind.present, verb.to))
        return false;
    const bool always_there = (states_of_set(kind, 0) & ~kind.present) == 0;
    return always_there ? verb.to == kind.set_first.front() : (verb.from & kind.present) == 0;
}

const Verb* find_verb(const Kind& kind, std::string_view name) {
    for (const Verb& verb : kind.verbs) {
        if (verb.name == name)
            return &verb;
    }
    return nullptr;
}

const Verb* inverse(const Kind& kind, const Verb& verb, StateId from) {
    for (const Verb& candidate : kind.verbs) {
        if (contains(candidate.from, verb.to) && candidate.to == from)
            return &candidate;
    }
    return nullptr;
}

bool inverts(const Verb& verb, const Verb& candidate) {
    return contains(candidate.from, verb.to) && contains(verb.from, candidate.to);
}

bool leads_home(const Kind& kind, const Verb& verb) {
    const StateSet up_to = (in_set(verb.to) << 1) - 1;
    return kind.set_of[verb.to] == 0 && (verb.from & up_to) == 0;
}

StateSet states_of_set(const Kind& kind, unsigned set) {
    StateSet states = 0;
    for (std::size_t state = 0; state < kind.states.size(); ++state) {
        if (kind.set_of[state] == set)
            states |= in_set(static_cast<StateId>(state));
    }
    return states;
}

std::optional<StateId> find_state(const Kind& kind, std::string_view name) {
    for (std::size_t state = 0; state < kind.states.size(); ++state) {
        if (kind.states[state] == name)
            return static_cast<StateId>(state);
    }
    return std::nullopt;
}

} // namespace matchmark::model
