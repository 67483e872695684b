// The shortest way through a kind's states, over all its sets together.
#pragma once

#include "model/kind.hpp"

#include <functional>
#include <vector>

namespace matchmark::hazards {

// One state of each set.
using Standing = std::vector<model::StateId>;

struct Stride {
    const model::Verb* verb = nullptr;
    model::StateId from = 0;
};

struct Way {
    bool found = false;
    std::vector<Stride> strides;
    Standing end;
};

Standing assembled(const model::Kind& kind);

// By verbs for which `may_use` holds, to the nearest standing that `is_there` accepts.
Way shortest_way(const model::Kind& kind, const Standing& start,
                 const std::function<bool(const model::Verb&)>& may_use,
                 const std::function<bool(const Standing&)>& is_there);

bool is_safe(const model::HazardUse& use, const Standing& standing);
// Does the verb belong to a set in which safety from the hazard lies?
bool leads_to_safety(const model::Kind& kind, const model::HazardUse& use, const model::Verb& verb);

} // namespace matchmark::hazards
