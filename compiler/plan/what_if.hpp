// What if: for each relation of a device, what the least way in to a part would save without it.
//
// What a relation is, and the device without it: relations.hpp. How answers are proved without
// planning everything again: docs/planning.md.
#pragma once

#include "plan/relations.hpp"
#include "plan/way_in/way_in.hpp"
#include "source/text.hpp"

namespace matchmark::plan {

// A part that is asked about, as the device is.
struct PartNow {
    model::ItemId part;
    Proof proof = Proof::unknown;
    std::size_t acts = 0;
    double seconds = 0; // usual time
};

// The same part without the relation.
struct PartThen {
    model::ItemId part;
    bool opened = false;         // there was no way in, and now there is
    std::size_t acts = 0;        // of the new way in
    double seconds = 0;          // of the new way in
    long long acts_saved = 0;    // negative: more. 0 when opened
    double seconds_saved = 0;    // negative: longer. 0 when opened
    bool now_impossible = false; // there was a way in, and now there is none
};

struct Change {
    Relation relation;
    std::vector<PartThen> parts; // those for which it makes a difference, as they were asked for
    std::size_t opened = 0;      // parts that can be reached at all
    long long acts_saved = 0;    // over all parts
    double seconds_saved = 0;
};

struct WhatIf {
    std::vector<PartNow> parts;
    std::vector<Change> changes; // what opens most, then what saves most seconds, then acts
    std::size_t relations = 0;   // looked at
    std::size_t unchanged = 0;   // of these, those that make no difference to any part
    std::size_t not_proved = 0;  // pairs of a part and a relation left out without a proof
    std::size_t planned = 0;     // pairs that had to be planned again
};

// `threads`: 0: as many as the machine has. The answer does not depend on them.
WhatIf what_if(const bench::Bench& bench, const std::vector<model::ItemId>& parts, bool expose,
               unsigned threads = 0);

// "with `drain-clamp` not behind `pump`"
std::string in_words(const model::Model& model, const SourceMap& sources, const Relation& relation);

} // namespace matchmark::plan
