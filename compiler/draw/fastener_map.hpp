// The fastener map: a face at true scale, with each fastener at its place.
//
// A sheet that is printed without fitting it to the page can be laid under the screws. A check
// square of 50 mm and a scale bar on every sheet tell whether the printer kept to it. A face larger
// than the sheet goes on over several, which overlap; crosses in the overlap lie on each other.
#pragma once

#include "draw/scene.hpp"
#include "language/language.hpp"
#include "model/model.hpp"

#include <vector>

namespace matchmark::draw {

enum class Paper : unsigned char { a4, letter };

// The sheets, by face; empty when the guide undoes no fastener whose place is known.
std::vector<Scene> fastener_map(const model::Model& model, const model::Procedure& procedure,
                                Paper paper, const language::Language& in = language::english());

} // namespace matchmark::draw
