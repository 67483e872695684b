// Starting texts for a device and for a guide, which check clean as they stand.
#pragma once

#include "bench/bench.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::drive {

// A small device with a lid, screws, a plug and a board, to be changed line by line.
std::string device_draft(const std::string& name);

// The parts that can be taken out, those first that take the most acts: they show the most of the
// device.
std::vector<model::ItemId> parts_by_depth(const bench::Bench& on);

// A guide of this name that takes the part out by the least way and puts it back; nothing when
// there is no such way. `use`: the device's file as seen from the guide.
std::optional<std::string> guide_to(const bench::Bench& on, model::ItemId part,
                                    const std::string& name, const std::string& use);

// One with its head alone.
std::string guide_without_steps(const std::string& name, const std::string& use);

// "replace-cell" -> "Replace cell"
std::string title_of(const std::string& name);

} // namespace matchmark::drive
