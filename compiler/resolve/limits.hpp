// How much of a device and its guides is taken on, so that a short file cannot ask for endless
// work. All are far above what a person could write or read.
#pragma once

#include <cstddef>

namespace matchmark::resolve {

// Models of a device: a set of them is the bits of a VariantMask.
constexpr std::size_t most_variants = 32;
// Guides done inside guides, counted downwards.
constexpr std::size_t most_guides_deep = 50;
// Steps that all guides in sight together take over from others with `do`.
constexpr std::size_t most_steps_taken = 20000;
// Names that unknown names are compared with, in all, to offer the nearest.
constexpr std::size_t most_names_compared = 1000000;

} // namespace matchmark::resolve
