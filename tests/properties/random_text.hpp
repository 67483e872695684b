// Devices made at random, written in the language with kinds of the parts library.
#pragma once

#include "support/chance.hpp"

#include <string>

namespace matchmark::properties {

// Hazards, supplies, plugs, seals, hinged covers, groups of screws, variants, choices of ways. What
// is in the way of a thing was mostly made before it, so that most devices come apart.
std::string random_text(support::Chance& chance);

// The same text in another layout: spaces, blank lines and the indentation as they come.
std::string another_layout(support::Chance& chance, const std::string& text);

} // namespace matchmark::properties
