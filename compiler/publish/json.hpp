// The model and the actions of a guide for other programs, by docs/model-json.md.
#pragma once

#include "model/model.hpp"

#include <string>

namespace matchmark::publish {

// One object, two spaces of indentation, ending in a newline: what one variant of the device is
// made of, and every act with the states that it starts from and leads to. Names are those of the
// source; amounts are in SI units.
std::string json(const SourceMap& sources, const model::Model& model,
                 const model::Procedure& procedure, unsigned variant);

} // namespace matchmark::publish
