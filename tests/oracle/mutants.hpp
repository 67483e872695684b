// Spoils a guide in small ways, the same ways each time: what two judges of it should agree about.
#pragma once

#include "model/model.hpp"

#include <string>
#include <vector>

namespace matchmark::oracle {

struct Mutant {
    std::string what; // "without `undo lid-screws`"
    model::Procedure procedure;
};

// Mutants of an unfolded guide, in a fixed order, spread evenly over its actions of that variant:
// an action left out, two neighbours swapped, an action brought forward half the way to the start,
// an action without what is named after `with`.
std::vector<Mutant> mutants(const model::Model& model, const model::Procedure& procedure,
                            unsigned variant);

} // namespace matchmark::oracle
