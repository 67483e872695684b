// Puts parts, counts and states into words, here alone: so backticks, units and plurals cannot
// vary.
#pragma once

#include "model/model.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace matchmark::model {

// "`lid-screws`"
std::string quoted(const Model& model, ItemId item);
// "`lid-screws` (4 screws)", "`cell` (lithium pouch cell)": the part and its kind
std::string with_kind(const Model& model, ItemId item);
// "the 4 lid screws", "the display lid": title for readers, without article when `article` is false
std::string for_reader(const Model& model, ItemId item, bool article = true);
// "the lid screws 1 and 3"; as above when all members are meant
std::string for_reader(const Model& model, const ItemRef& ref, bool article = true);
// Units as the SI Brochure prints them: "0.2 N·m", "60 °C", "10 kΩ"
std::string for_reader(const Quantity& quantity);
// "at least 5 mm", "below 60 V", "0.05 to 0.15 mm"
std::string for_reader(const Limit& limit);
// "`unlocked` or `apart`": any of these will do
std::string states_in_words(const Kind& kind, StateSet states);
// "`a`, `b` and `c`"
std::string list(const std::vector<std::string>& words, const char* joiner = "and");
// "1 screw", "4 screws"
std::string counted(std::size_t count, const std::string& singular);
std::string plural(const std::string& singular);
// Could the word be the plural of any: "screws", "feet"?
bool may_be_plural(std::string_view word);

// The words of a description: parted at spaces, hyphens and the like, without the sign that ends a
// sentence.
std::vector<std::string_view> words_in(std::string_view description);
// Whether the words of `description` (as above, case folded for ASCII) include all the words
// of `phrase`. A phrase without words is in nothing.
bool has_words(std::string_view description, std::string_view phrase);

} // namespace matchmark::model
