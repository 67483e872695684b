// What a part passes on of what feeds it, as a transformer or a switch does.
#pragma once

#include "model/model.hpp"

namespace matchmark::model {

// Adds up the lines of what each source feeds, which stand in `feeds_through` one by one: a
// connector that is on all of them cuts the source and becomes its `through`, one that is not cuts
// off what the others do not name. Called once, when all is read.
void settle_feeds_lines(Model& model);

// Takes each part whose kind `passes on`, and that another feeds, out of the sources: what it
// `feeds` becomes what it `passes_to`, and each source that feeds it, or what it is in, feeds that
// too. A part that nothing feeds stays a source of its own, as a power supply on the desk is; so
// does one that is not there in each variant of what it feeds. Called once, when all is read.
void settle_passing_on(Model& model);

// The connectors of passing parts behind which the part lies, on every way that it is fed by the
// source.
std::vector<ItemId> connectors_to(const Item& source, ItemId part);

// Is the connector on the source's own line that feeds the part, and not on all of its lines?
// Parted, it cuts off what lies behind it.
bool is_on_its_line(const Item& source, ItemId connector, ItemId part);

// Of what the source feeds, or the part passes on to, what a line of the device names.
std::vector<ItemId> fed_directly(const Item& source);

} // namespace matchmark::model
