// An outline in Markdown written as a guide: headings are steps, lines of lists are actions where
// a verb and an item of the device can be told, and stay text where not.
#pragma once

#include "model/model.hpp"

#include <string>

namespace matchmark::drive {

struct Outline {
    std::string markdown;
    std::string name; // of the guide
    std::string from; // the outline's file, for the head
    std::string use;  // the device's file as seen from the guide
};

std::string guide_from(const Outline& outline, const model::Model& device);

// The action that a line of an outline tells: "Undo the four lid screws" -> `undo lid-screws`.
struct ToldAction {
    std::string source; // empty: none could be told
    bool sure = false;  // it opens with the verb itself; else the item's only way outwards is meant
    bool says_more = false; // words are left that the action does not hold
};
ToldAction told_action(const std::string& line, const model::Model& device);

} // namespace matchmark::drive
