// Titles of groups that say several already, "lid screws": a page that counts them would make
// "4 lid screwses" of it.
#pragma once

#include "model/model.hpp"

#include <map>
#include <optional>

namespace matchmark::model {

// What kinds of each role are called, by the plural of it: "screws" -> "screw".
using KindsCalled = std::map<Role, std::map<std::string, std::string, std::less<>>>;
KindsCalled kinds_called(const Model& model);

// The title as it is said of one, if it ends in the plural of what a kind of this role is called;
// nothing otherwise. "screws of the lid" -> "screw of the lid".
std::optional<std::string> said_of_one(const KindsCalled& kinds, Role role,
                                       const std::string& title);

} // namespace matchmark::model
