// Sentences of a guide's prose, with where they stand in the source.
#pragma once

#include "check/walk.hpp"

#include <string>
#include <vector>

namespace matchmark::check {

struct Sentence {
    std::vector<std::string> words; // Markdown signs left out
    Span span;                      // in the source; the whole prose if it could not be found
};

std::vector<Sentence> sentences(const SourceMap& sources, const model::Prose& prose);

// The prose of the procedure's steps that tells the reader what to do.
std::vector<const model::Prose*> procedural_prose(const Walk& walk);

} // namespace matchmark::check
