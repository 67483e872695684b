// Looks into kinds: their verbs, the way back, their states.
#include "model/kind.hpp"

#include <algorithm>

namespace matchmark::model {

bool lets_go(const Kind& kind, const Verb& verb) {
    return kind.set_of[verb.to] == 0 && (verb.from & kind.binds) != 0 &&
           !contains(kind.binds, verb.to);
}

bool asks_reach(const Kind& kind, const Verb& verb) {
    const bool goes_in = contains(kind.present, verb.to) && (verb.from & ~kind.present) != 0;
    const bool comes_out = !contains(kind.present, verb.to) && (verb.from & kind.present) != 0;
    return !verb.from_outside || (kind.role == Role::part && (goes_in || comes_out));
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

namespace {

// States of the first set are declared from the assembled one outwards.
bool passes_over(const Kind& kind, const Verb& named, StateId from, StateId to) {
    if (kind.set_of[from] != 0 || kind.set_of[to] != 0 || kind.set_of[named.to] != 0)
        return false;
    const auto [inner, outer] = std::minmax(from, to);
    for (StateId start = inner; start <= outer; ++start) {
        if (contains(named.from, start) && named.to >= inner && named.to <= outer)
            return true;
    }
    return false;
}

} // namespace

bool counts_for(const Kind& kind, std::string_view named, const Verb& verb, StateSet from) {
    if (named == verb.name)
        return true;
    const Verb* other = find_verb(kind, named);
    if (other == nullptr)
        return false;
    if (inverts(*other, verb))
        return true;
    for (std::size_t state = 0; state < kind.states.size(); ++state) {
        const auto start = static_cast<StateId>(state);
        if (contains(from, start) && passes_over(kind, *other, start, verb.to))
            return true;
    }
    return false;
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
