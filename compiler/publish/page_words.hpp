// Sentences and passages of a guide as parts of a page.
#pragma once

#include "guide/document.hpp"

namespace matchmark::publish {

// A sentence: values strong, item numbers in balloons.
std::string words(const guide::Words& words);

// Sentences in a list under a label; empty when there are none.
std::string listed(const char* label, const std::vector<guide::Words>& sentences);

// Notes, reasons and plain text, in the order given.
std::string passages(const std::vector<guide::Passage>& passages);

} // namespace matchmark::publish
