// Which act of a walk switches a supply on.
#pragma once

#include "check/walk.hpp"

namespace matchmark::check {

// The source that event `at`, an act, makes live; unknown when it makes none so.
model::ItemId switched_on(const Walk& walk, std::size_t at);

} // namespace matchmark::check
