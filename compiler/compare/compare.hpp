// The procedural difference: what a person has to do, know or have otherwise than before. How the
// two texts differ is of no account.
#pragma once

#include "compare/change.hpp"
#include "guide/document.hpp"
#include "model/model.hpp"

namespace matchmark::compare {

// One state of a guide: its procedure unfolded, and the guide that its reader holds.
struct Side {
    const model::Model& model;
    const model::Procedure& procedure;
    const guide::Document& document;
};

Difference compare_guides(const Side& before, const Side& after);

// The same of a device that stands alone: all that it says of its items.
Difference compare_devices(const model::Model& before, const model::Model& after);

} // namespace matchmark::compare
