// The faces of a device as its page shows them: an outline, and what has its place there.
#pragma once

#include "model/model.hpp"

#include <string>

namespace matchmark::serve {

constexpr double face_margin = 24; // mm of paper round a face: room for the balloons

// A section for each face, drawn as the fastener map draws it; a sentence when there is none.
std::string faces(const model::Model& model);

// Every item, and how many of its members have a place.
std::string places(const model::Model& model);

} // namespace matchmark::serve
