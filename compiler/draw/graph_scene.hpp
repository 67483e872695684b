// Boxes and arrows as a drawing: measured, laid out, painted.
#pragma once

#include "draw/graph.hpp"
#include "draw/scene.hpp"

namespace matchmark::draw {

// At its natural size, letters 2.6 mm and larger; a part of the graph that nothing joins to the
// rest is laid out by itself, and the parts stand in rows.
Scene scene_of(const Graph& graph);

// Without its title, which the page gives it, and arranged so that it fits the body of a page and
// its smallest letters stay 2 mm high: the arrows run across or down, words break earlier, and
// where that is not enough the boxes bear their titles alone.
Scene scene_for_page(const Graph& graph);

} // namespace matchmark::draw
