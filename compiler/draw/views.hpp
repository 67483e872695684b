// What a drawing of a device can show: what comes off before what, what holds what, what feeds
// what.
#pragma once

#include "draw/folding.hpp"
#include "draw/graph.hpp"

namespace matchmark::draw {

// An arrow leads from what comes off first. A broken arrow is one of several ways; of two arrows
// that say the same by a longer way, the longer stands.
Graph access_graph(const Model& model, const Viewing& viewing);

// Parts, and between them what ties them, with counts.
Graph held_graph(const Model& model, const Viewing& viewing);

// Sources and what they feed; plugs, leads and hoses between the parts that they join; fluids where
// they are. No boxes when the device has none of it.
Graph wiring_graph(const Model& model, const Viewing& viewing);

} // namespace matchmark::draw
