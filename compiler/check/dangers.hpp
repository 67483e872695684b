// The danger behind a refusal, in the fitter's words, so that what was left out is known by it.
#pragma once

#include "check/walk.hpp"

#include <string>

namespace matchmark::check {

// "Stored charge: " when the verb leads the item, found in that state, towards safety from a hazard
// of its kind; empty otherwise.
std::string danger_on_the_way(const model::Model& model, model::ItemId item,
                              const model::Verb& verb, model::StateId found);

// The same when one of these states is one in which a hazard of the item's kind is no more.
std::string danger_ended_in(const model::Model& model, model::ItemId item, model::StateSet states);

// The same for the first hazard of the item's kind.
std::string danger_of(const model::Model& model, model::ItemId item);

} // namespace matchmark::check
