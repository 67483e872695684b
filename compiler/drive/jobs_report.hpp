// Several jobs in one opening, and what a change of the design would save, as `plan` tells them.
#pragma once

#include "drive/device_goal.hpp"
#include "plan/jobs.hpp"
#include "plan/what_if.hpp"

#include <nlohmann/json_fwd.hpp>

#include <iosfwd>

namespace matchmark::drive {

// A line for each job: alone, and added once those before it have the device open; then together.
void write_jobs(const model::Model& model, const std::vector<plan::Job>& jobs,
                const plan::WayIn& together, std::ostream& out);
// The acts of jobs that follow on another, and what each would have taken alone.
void write_then(const model::Model& model, const std::vector<plan::Job>& jobs, std::ostream& out);
nlohmann::ordered_json jobs_json(const model::Model& model, const std::vector<plan::Job>& jobs);

// `most`: so many changes are told, and the others counted.
void write_what_if(const Compilation& done, const plan::WhatIf& found, bool expose,
                   std::size_t most, std::ostream& out);
nlohmann::ordered_json what_if_json(const Compilation& done, const plan::WhatIf& found,
                                    bool expose);

} // namespace matchmark::drive
