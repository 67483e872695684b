// Safety messages as panels with their signal words.
#pragma once

#include "guide/document.hpp"

namespace matchmark::publish {

// A panel before the actions of a step.
std::string panel(const guide::Document& document, const guide::Message& message);

// All messages of a guide with links to the steps that they are about, and what energy is stored;
// empty when there are none.
std::string safety_first(const guide::Document& document);

// "eu only"; empty for what is for all.
std::string variant_tag(const std::vector<std::string>& variants,
                        const language::Language& in = language::english());

} // namespace matchmark::publish
