// Models that are no longer needed, made use of again: to copy the parts library or a large device
// takes longer than to resolve a guide upon it.
#pragma once

#include "resolve/resolve.hpp"

namespace matchmark::resolve {

// `model` was made on this base, and what the base has was not changed in it. The next one is made
// of it. Several threads may call this at a time.
void give_back(const Base& base, model::Model model);

} // namespace matchmark::resolve
