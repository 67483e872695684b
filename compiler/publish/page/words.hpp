// Sentences and passages of a guide as parts of a page.
#pragma once

#include "guide/document.hpp"

namespace matchmark::publish {

// A sentence: values strong, item numbers in balloons.
std::string words(const guide::Words& words, const language::Language& in = language::english());

// Sentences in a list under a label; empty when there are none.
// `label` is an English phrase of the compiler's.
std::string listed(const char* label, const std::vector<guide::Words>& sentences,
                   const language::Language& in = language::english());

// Notes, reasons and plain text, in the order given.
std::string passages(const std::vector<guide::Passage>& passages,
                     const language::Language& in = language::english());

} // namespace matchmark::publish
