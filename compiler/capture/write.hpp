// A description as text in the language: a device's file, or the changes to one that is there.
#pragma once

#include "capture/description.hpp"

#include <string>
#include <vector>

namespace matchmark::capture {

// The whole file, not in canonical layout.
std::string device_text(const model::Model& model, const Description& description);
// The declarations of what is not declared yet; empty when all is.
std::string new_pieces_text(const model::Model& model, const Description& description);

// The pairs that lines of the device assume.
std::set<Before> assumed_pairs(const model::Model& model);

// The changes to the lines that are assumed in the device's file `file`: what the notes contradict
// goes, what followed from it by way of others is written out. Nothing else is touched.
std::vector<Edit> refinements(const SourceMap& sources, const model::Model& model, FileId file,
                              const Description& description);

} // namespace matchmark::capture
