// The repairability index of a smartphone or slate tablet: from what was counted, and what the
// device says, to six scores, the index and its class.
#pragma once

#include "appraise/eu_index_tables.hpp"
#include "guide/appraisal.hpp"
#include "model/model.hpp"

#include <optional>
#include <string>
#include <vector>

namespace matchmark::appraise {

// One of the items that count as a priority part: of several, each score takes its lowest.
struct PartFacts {
    std::string title;
    bool reached = true; // false: no way in, which scores lowest
    bool known = true;   // false: none was found in the time given, which leaves it open
    unsigned steps = 0;  // without those of an authorisation
    bool authorised_remotely = false;
    Fastening fastening = Fastening::reusable;
    ToolSource tool = ToolSource::none;
    std::string worst_fastener; // which decides; may be empty
    std::string worst_tool;
    std::string undeclared_tool; // one that nothing gives a class; empty: there is none
};

struct IndexFacts {
    bool folding = false;
    std::array<std::vector<PartFacts>, index_part_count> parts; // by IndexPart
    bool parts_declared = true; // false: no item says that it counts as a priority part
    std::optional<int> update_years;
    std::optional<std::vector<IndexPart>> spares;
    std::string information; // empty: not said
};

guide::RepairIndex repair_index(const IndexFacts& facts);

// What the device says; nothing when it is in the scope of no index. The parts' facts are left
// empty.
std::optional<IndexFacts> declared_facts(const model::Model& model);

// The part that an item counts as.
std::optional<IndexPart> index_part(const model::Item& item);

} // namespace matchmark::appraise
