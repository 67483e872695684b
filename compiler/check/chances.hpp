// Where in the work something could be proved.
#pragma once

#include "check/trials.hpp"

#include <optional>
#include <vector>

namespace matchmark::check {

// For each obligation the points (events; the count: the end) where a test could prove it, in
// order: all is back, and nothing hides it if that can be had. Found in one pass over the walk.
std::vector<Chances> chances_for(const Walk& walk, const std::vector<Obligation>& obligations);

// For each that a test proves in time while it is hidden: the last point between its cause and the
// test at which nothing hid it, if there is one. Found in one pass over the walk.
std::vector<std::optional<std::size_t>> last_open_before_test(const Walk& walk,
                                                              const std::vector<Proven>& all);

// The points that both have.
Chances common(const Chances& some, const Chances& others);

} // namespace matchmark::check
