// The way to a part, act by act: what a drawing numbers.
#pragma once

#include "language/spoken.hpp"
#include "model/model.hpp"

#include <string>
#include <vector>

namespace matchmark::draw {

// One act on the way to a part, in words: "undo the 4 lid screws".
struct WayStep {
    model::ItemId item;
    std::string words;
};

// The acts that bring the item out of the assembled device, as the bench knows them, in the first
// variant that has it, with those that make safe what they would meet; what is done from outside,
// as a plug is pulled, stands first. Empty when there is no way.
std::vector<WayStep> way_to(const model::Model& model, model::ItemId item,
                            const language::Language& in = language::english());

// The same as a guide goes it: what its acts make safe, open or take off until the item is out, in
// the guide's order. Empty when it never brings the item out.
std::vector<WayStep> way_in_guide(const model::Model& model, const model::Procedure& procedure,
                                  model::ItemId item,
                                  const language::Language& in = language::english());

} // namespace matchmark::draw
