// The bench sheet: one line an action with a box to tick, and places to write down what is
// measured.
#pragma once

#include "guide/document.hpp"
#include "publish/paper/size.hpp"

#include <string>

namespace matchmark::publish {

// As `pdf`, of the same arguments.
std::string sheet_pdf(const guide::Document& document, Paper paper, const std::string& created);

// One page that holds all that it shows and has no script.
std::string sheet_html(const guide::Document& document);

} // namespace matchmark::publish
