// Turns the model's JSON (docs/model-json.md) into the facts that bench.lp reads.
#pragma once

#include <cstddef>
#include <nlohmann/json.hpp>
#include <string>

namespace matchmark::oracle {

// What the device is made of, in the variant that the JSON is for.
std::string device_facts(const nlohmann::json& root);

// The acts of one guide, or of one mutant of it, as scenario number `scenario` on that device.
std::string scenario_facts(const nlohmann::json& root, std::size_t scenario);

} // namespace matchmark::oracle
