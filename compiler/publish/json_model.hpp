// Kinds and items as JSON values.
#pragma once

#include "model/model.hpp"

#include <nlohmann/json.hpp>

namespace matchmark::publish {

using Json = nlohmann::ordered_json;

Json json_kinds(const model::Model& model);
Json json_items(const model::Model& model, unsigned variant);
Json json_functions(const model::Model& model);

Json json_condition(const model::Model& model, const model::Condition& condition);
Json json_ref(const model::Model& model, const model::ItemRef& ref);
Json json_names(const model::Model& model, const std::vector<model::ItemId>& items);
// {"value": 0.2, "unit": "N.m", "base": 0.2}; null for none.
Json json_quantity(const std::optional<model::Quantity>& quantity);
Json json_limit(const std::optional<model::Limit>& limit);
Json json_tightening(const std::optional<model::Tightening>& tightening);

} // namespace matchmark::publish
