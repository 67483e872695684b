// One step of a guide as a part of a page.
#pragma once

#include "guide/document.hpp"

namespace matchmark::publish {

std::string step(const guide::Step& step, const guide::Assets& assets);

// A sentence: values strong, item numbers in balloons.
std::string words(const guide::Words& words);

// Notes, reasons and plain text, in the order given.
std::string passages(const std::vector<guide::Passage>& passages);

} // namespace matchmark::publish
