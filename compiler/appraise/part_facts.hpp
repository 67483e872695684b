// What the way to one part says: for its row in the table, and for its share in the index.
#pragma once

#include "appraise/appraise.hpp"
#include "appraise/eu_index.hpp"

namespace matchmark::appraise {

guide::PartAppraisal part_row(const model::Model& model, const PartWay& way,
                              const FewestSteps& counted);
PartFacts part_facts(const model::Model& model, const PartWay& way, const FewestSteps& counted);

// From where a fitter has the tool: the device's `supplied`, or else its tool-kind's class.
// Nothing when neither says.
std::optional<ToolSource> source_of(const model::Model& model, const std::string& tool);
// What undoing the tie on the way to the part leaves.
Fastening fastening_of(const model::Item& tie, model::ItemId part);

} // namespace matchmark::appraise
