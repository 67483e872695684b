// Short facts about a guide and a step, in the same words in every form.
#pragma once

#include "guide/document.hpp"

namespace matchmark::publish {

struct Fact {
    std::string term; // "Handling alone"
    std::string words;
};

// What the title block of a drawing says: of what, which issue, by whom. Empty ones are left out.
std::vector<Fact> facts(const guide::Document& document);

// The step's tools and times. Empty ones are left out.
std::vector<Fact> facts(const guide::Step& step,
                        const language::Language& in = language::english());

// "Together", before the sum of the prices; with a word about what has none and is not in it.
std::string sum_words(const guide::Document& document);

// "driver 6, 2, 14.50 EUR, for the lid"
std::string one_line(const guide::Provision& provision);

// "danger", "notice": as a class of a style sheet and a type of DITA call it.
const char* signal_name(guide::Signal signal);

// "steps 3 to 7"
std::string step_range(const guide::Section& section,
                       const language::Language& in = language::english());

} // namespace matchmark::publish
