// Parts, counts, quantities and lists in the reader's language.
//
// In English they are those of model/describe.hpp. In a catalogue an item stands with its article
// in brackets, "[die] {count} Deckelschrauben": with it in a sentence, without it in a list.
#pragma once

#include "language/language.hpp"
#include "model/model.hpp"
#include "model/spelling.hpp"

#include <string>
#include <vector>

namespace matchmark::language {

// As a catalogue has it: context "item lid-screws", "[the] lid screw", "[the] {count} lid screws".
struct ItemKey {
    std::string context;
    std::string one;
    std::string many; // empty: there is one of it
};
ItemKey item_key(const model::Model& model, model::ItemId item);

// "the 4 lid screws"; without its article when `article` is false
std::string said(const Language& language, const model::Model& model, model::ItemId item,
                 bool article = true);
// "the lid screws 1 and 3"
std::string said(const Language& language, const model::Model& model, const model::ItemRef& ref,
                 bool article = true);
// "lid screws", without count or article
std::string said_bare(const Language& language, const model::Model& model, model::ItemId item);

// "lid screw": one of them
std::string said_one(const Language& language, const model::Model& model, model::ItemId item);

// A text with its bracketed article, "[dem] Schraubendreher": as in a sentence, or alone.
std::string with_article(const std::string& text, bool article);

// "0,2 N·m"
std::string said(const Language& language, const model::Quantity& quantity);
// "at least 5 mm", "0.05 to 0.15 mm"
std::string said(const Language& language, const model::Limit& limit);
std::string said_number(const Language& language, double value);
// A length of time, wherever one is shown: "52 s", "1 min 11 s", "2 h 5 min". To the second,
// from an hour on to the minute.
std::string said_time(const Language& language, double seconds);
// "A, B and C", "A or B"
std::string said_list(const Language& language, const std::vector<std::string>& words,
                      std::string_view joiner = "and");
// What stands between the last two of a list, with its spaces: " and ".
std::string joined_by(const Language& language, std::string_view joiner, std::string_view next);

using model::spaced;

// The pattern of a verb: "Undo {the items}{how}".
std::string verb_key(const std::string& verb);
std::string verb_pattern(const Language& language, const std::string& verb);
// The same behind other words, "undo {the items}{how}": its first letter small, but not where the
// language writes nouns large and it may be one.
std::string verb_pattern_within(const Language& language, const std::string& verb);
// A phrase that describes a fastener: "countersunk"; sizes and threads stay as they are.
std::string description_words(const Language& language, const std::string& phrase);
// A state of a kind: "connected".
std::string state_words(const Language& language, const std::string& state);

} // namespace matchmark::language
