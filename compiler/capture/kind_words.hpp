// Kinds and verbs by the words with which a person at the bench calls them.
//
// A kind is sure when all words of its title or its name were said; else the nearest one is taken,
// and the others that it could have been are told.
#pragma once

#include "model/model.hpp"
#include "source/each_word.hpp"

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace matchmark::capture {

using RoleSet = unsigned;
constexpr RoleSet any_role = 0xff;
constexpr RoleSet in_role(model::Role role) { return 1U << static_cast<unsigned>(role); }

// "clips" -> "clip"; a word that is no plural stays as it is.
std::string singular(const std::string& word);
// At spaces, hyphens and commas, in small letters.
std::vector<std::string> split_words(std::string_view text);
// The same words as they stand in the text, one after the other, for `visit(word)`: what is asked
// of each kind of the library need not be copied.
template <class Visit> void each_word(std::string_view text, Visit visit) {
    matchmark::each_word(text, " -,", visit);
}
char small(char c); // of ASCII alone
// `word` in small letters is the other.
bool is_word(std::string_view word, std::string_view small_letters);
bool among(const std::vector<std::string>& words, const std::string& word);
bool one_of(const std::string& word, std::initializer_list<const char*> list);

struct KindFound {
    model::KindId kind;
    bool sure = false;
    std::vector<std::string> others; // names of the next best, when it is not sure
    std::vector<bool> used;          // which of the words said are the kind's
};

// Of the words said, in singular, the last names the thing: "lid screw" is a screw. Nothing when no
// kind of these roles is called so.
std::optional<KindFound> kind_by_words(const model::Model& model, RoleSet roles,
                                       const std::vector<std::string>& words,
                                       const std::string& verb);
// A supply that one act from outside cuts, as a person means it who pulls a plug: by a word that no
// part, tie or fluid is called by ("mains lead"), or by the verb that leads back ("the plug"),
// which is no sure one. Nothing when another thing may be meant.
std::optional<KindFound> supply_by_words(const model::Model& model,
                                         const std::vector<std::string>& words,
                                         const std::string& verb);
// The supply to be most careful with that the verb cuts; nothing when none has it.
std::optional<model::KindId> gravest_supply(const model::Model& model, const std::string& verb);
// Is some kind of these roles called by this word, with or without more words?
bool calls_a_kind(const model::Model& model, RoleSet roles, const std::string& word);
// The plainest kind of these roles that has the verb (empty: any); nothing when none has.
std::optional<model::KindId> kind_with_verb(const model::Model& model, RoleSet roles,
                                            const std::string& verb);

struct VerbFound {
    std::string name;      // a verb of the library, or the everyday word
    RoleSet roles = 0;     // of what it is said of
    std::size_t words = 0; // how many of the words it took
    bool guessed = false;  // spelt otherwise
};

// From the first words of a line. Nothing when they are no verb that leads outwards.
std::optional<VerbFound> verb_by_words(const model::Model& model,
                                       const std::vector<std::string>& words);

// Does the verb lead away from how its kind stands when assembled?
bool leads_outwards(const model::Kind& kind, const model::Verb& verb);

} // namespace matchmark::capture
