// Boxes and arrows as a drawing: measured, laid out, painted.
#pragma once

#include "draw/graph.hpp"
#include "draw/scene.hpp"

namespace matchmark::draw {

// At its natural size, letters 2.6 mm and larger; a part of the graph that nothing joins to the
// rest is laid out by itself, and the parts stand in rows.
Scene scene_of(const Graph& graph);

} // namespace matchmark::draw
