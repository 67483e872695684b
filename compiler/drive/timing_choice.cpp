// Finds the timing that a command names.
#include "drive/timing_choice.hpp"

#include "drive/inputs.hpp"
#include "plan/work_time.hpp"

#include <fmt/core.h>

namespace matchmark::drive {

std::optional<std::string> choose_timing(model::Model& model, const std::string& name) {
    if (name.empty() || plan::use_timing(model, name))
        return std::nullopt;
    std::vector<std::string> names;
    for (const model::Timing& timing : model.timings)
        names.push_back(timing.name);
    const std::string near = did_you_mean(name, names);
    return fmt::format("there is no timing `{}`{}", name,
                       near.empty() ? "; `matchmark kinds timings` lists them" : near);
}

} // namespace matchmark::drive
