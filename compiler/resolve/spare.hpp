// Models that are no longer needed, made use of again: to copy a large device takes longer than to
// resolve a guide of it.
#pragma once

#include "resolve/resolve.hpp"

namespace matchmark::resolve {

// `model` was made on this base, which has a device. The next one is made of it.
void give_back(const Base& base, model::Model model);

} // namespace matchmark::resolve
