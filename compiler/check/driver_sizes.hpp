// A driver that is listed in another size than the screws take.
#pragma once

#include "check/walk.hpp"

#include <optional>
#include <set>
#include <string>

namespace matchmark::check {

// "hexalobular driver": the first tool that the item's drive lists, in words.
std::string driver_for(const Walk& walk, const model::Item& item);

// Of the guide's own tools that are not among those used, the first of a sort that turns the item's
// drive, though not in its size; nothing when another tool of the list fits.
std::optional<model::ResourceId> in_another_size(const Walk& walk, const model::Item& item,
                                                 const model::Verb& verb,
                                                 const std::set<std::uint32_t>& used);

} // namespace matchmark::check
