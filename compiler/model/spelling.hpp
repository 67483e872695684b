// From the language to words and back: actions as source lines, for mends and for `expand`; names
// and texts as they are written.
#pragma once

#include "model/model.hpp"

#include <string>
#include <string_view>

namespace matchmark::model {

// "fasten lid-screws with driver-6 to 0.20 N.m": one line, no indentation.
std::string as_source(const Model& model, const std::vector<Resource>& resources,
                      const Action& action);
// "lid-screws 1, 3"
std::string as_source(const Model& model, const ItemRef& ref);

// A name as words: "flip-lock" -> "flip lock".
std::string spaced(std::string name);

// "undo the screws" -> "Undo the screws": letters of English alone.
std::string capitalised(std::string words);

// "Lid Screw (M2)" -> "lid-screw-m2": what a person calls a thing, as a name of the language,
// whatever signs stand in it. What would begin with a digit gets `before` and a hyphen first; empty
// when no letter or digit is left.
std::string name_from(std::string_view words, std::string_view before = "part");

// A text as the language writes it: in double quotes, with what would end it escaped.
std::string in_quotes(std::string_view text);

} // namespace matchmark::model
