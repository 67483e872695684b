// An act with what it means worked out once, for all who ask of it.
#pragma once

#include "bench/bench.hpp"

namespace matchmark::bench {

// Lives no longer than what it was made from.
struct Attempt {
    const Bench& bench;
    const State& state;
    const Act& act;
    const model::Item& item;
    const model::Kind& kind;
    const model::Verb& verb;
    std::vector<std::uint16_t> members; // from 0, those that change
    unsigned set = 0;
    bool first_set = false;
};

Attempt attempt(const Bench& bench, const State& state, const Act& act);

// The members, from 0, that stand in a from-state of the verb, among those that the act names.
std::vector<std::uint16_t> changing(const Bench& bench, const State& state, const Act& act);

// Does the act bring some member into one of these states of the first set, or out of them?
bool changes(const Attempt& at, model::StateSet states);

} // namespace matchmark::bench
