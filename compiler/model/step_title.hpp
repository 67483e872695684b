// What a step is called that nobody has given a title: after what it does.
#pragma once

#include "model/model.hpp"

#include <string>
#include <vector>

namespace matchmark::model {

// What the actions do, verb by verb.
std::vector<Target> deeds_of(const std::vector<Action>& actions);

// Those of a step's deeds that its title names, in their order: `main`, and each energy that the
// step brings back from outside, by the last that is done to it; when `main` is done to an energy
// itself, all energies. Whoever reads "Fit the cover" must see that the mains come on with it.
std::vector<std::size_t> named_beside(const Model& model, const std::vector<Target>& deeds,
                                      std::size_t main);

// The same with the first part that moves as `main`, or else the first deed.
std::vector<std::size_t> named_deeds(const Model& model, const std::vector<Target>& deeds);

// "Fit the cell", "Turn on the air and start up the mains"; empty when nothing is done.
std::string step_title(const Model& model, const std::vector<Target>& deeds);

} // namespace matchmark::model
