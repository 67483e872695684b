// A danger that the author's way back made live again while it could still be met: the plug put in
// before the cover.
#pragma once

#include "check/walk.hpp"

#include <optional>

namespace matchmark::check {

struct TooEarly {
    Span line;                      // of the way back: it makes the item dangerous again
    const LeftOff* later = nullptr; // where it can be done without danger, as the walk found; of it
};

// Nothing when the danger was there all along, when its line is not written in the guide's own way
// back, or when no later place was found.
std::optional<TooEarly> too_early(const Walk& walk, const Trouble& trouble,
                                  const bench::Exposure& met);

// Is what was left off only what was put back too early? Then it is told there.
bool told_as_too_early(const Walk& walk, const LeftOff& left);

} // namespace matchmark::check
