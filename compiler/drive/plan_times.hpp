// The times of a way in, as `plan` shows them.
#pragma once

#include "plan/way_in/way_in.hpp"

#include <iosfwd>
#include <string>

namespace matchmark::drive {

// "undo the 4 lid screws"
std::string act_words(const model::Model& model, const bench::Act& act);
// Of the usual timing; empty when there is none.
std::string timing_name(const model::Model& model);

// A line for each act, with the tasks of which its time is made in columns.
void write_times(const model::Model& model, const plan::WayIn& way, std::ostream& out);
// What it takes with the changes of tool and the turnings, and back again; by which timing.
void write_labour(const model::Model& model, const plan::WayIn& way, std::ostream& out);
// How often the device is turned, and whether that is proved fewest. Nothing when no side is told.
void write_turnings(const plan::WayIn& way, std::ostream& out);

// An object, as text.
std::string time_as_json(const plan::ActTime& time);

} // namespace matchmark::drive
