// The changes found so far, and what of them belongs together: one cause is one entry.
#pragma once

#include "compare/pairing.hpp"

#include <set>

namespace matchmark::compare {

struct Gathering {
    const Pairing& pairing;
    std::vector<Change> changes;
    std::vector<Change> notes;
    // By deed, old and new: the entry that tells of it.
    std::map<std::size_t, std::size_t> told_old = {};
    std::map<std::size_t, std::size_t> told_new = {};

    // Adds an entry, or the step to the entry that says the same already. Gives its place.
    std::size_t add(Change change);
    // The place in the work by which entries are sorted: that of a new step, or of where an old
    // one was.
    [[nodiscard]] std::size_t at_new(std::size_t step) const { return step * 2 + 1; }
    [[nodiscard]] std::size_t at_old(std::size_t step) const;
};

// --- each looks for changes of its sort ---
void find_steps(Gathering& gathering);
void find_actions(Gathering& gathering);
void find_details(Gathering& gathering);
void find_order(Gathering& gathering);
void find_tests(Gathering& gathering);
void find_words(Gathering& gathering);
void find_needs(Gathering& gathering);
void find_head(Gathering& gathering);
void find_facts(Gathering& gathering);
void find_messages(Gathering& gathering);
void find_gear(Gathering& gathering);
// What no other has found: so that "no change" is never said of two guides that read differently.
void find_rest(Gathering& gathering);

// Does the deed lead towards safety: is it the way to a state in which a hazard of the item is no
// more, or the connector through which a supply of energy feeds?
bool makes_safe(const model::Model& model, const Deed& deed);

// Prose with its line breaks taken out, blank lines and lists kept.
std::string flowing(std::string_view markdown);

// "step 3, Take the cell out"
std::string words_of(const StepPlace& place);

} // namespace matchmark::compare
