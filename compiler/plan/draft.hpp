// A complete guide, drafted from a way in: steps, tools, supplies, tests; a person adds what only a
// person knows.
#pragma once

#include "plan/way_in/way_in.hpp"

#include <string>
#include <vector>

namespace matchmark::plan {

struct DraftGoal {
    std::string verb; // replace, or a verb of the items' kinds
    std::vector<model::ItemId> items;
    std::string only = {}; // the variant that the guide is for; empty: all
    std::string name = {}; // of the guide; empty: made of what is done to what
};

// The one that the goal gives, or "replace-cell".
std::string draft_name(const model::Model& model, const DraftGoal& goal);

// The text of a guide in the language, not in canonical layout. `use`: the device's file as seen
// from the guide. The acts of `way` are to stand in order of their reasons.
std::string draft(const bench::Bench& bench, const WayIn& way, const DraftGoal& goal,
                  const std::string& use);

} // namespace matchmark::plan
