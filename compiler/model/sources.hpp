// The other way round of `feeds` and `through`.
#pragma once

#include "model/model.hpp"

namespace matchmark::model {

// Fills `sources` and the kinds beside it, `fed_by` and `carries_from` of all items, and the bare
// ends and terminals of supplies, from what each feeds and through what. To be done once all of
// that is known: the bench asks only the items themselves what feeds them.
void settle_sources(Model& model);

} // namespace matchmark::model
