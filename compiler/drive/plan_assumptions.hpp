// What a way in rests on that nobody has seen, as `plan` tells it.
#pragma once

#include "drive/compilation.hpp"
#include "plan/way_in/way_in.hpp"

#include <nlohmann/json_fwd.hpp>

#include <iosfwd>

namespace matchmark::drive {

// Nothing when the device assumes nothing.
void write_assumed(const Compilation& done, const bench::Bench& on, const plan::WayInGoal& goal,
                   const plan::WayIn& way, std::ostream& out);
nlohmann::ordered_json assumed_json(const Compilation& done, const bench::Bench& on,
                                    const plan::WayInGoal& goal, const plan::WayIn& way);

} // namespace matchmark::drive
