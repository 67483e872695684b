// Everything that one compilation knows, as every phase reads it.
#pragma once

#include "model/guide_source.hpp"
#include "model/thread.hpp"
#include "model/timing.hpp"

#include <string>
#include <unordered_map>
#include <vector>

namespace matchmark::model {

struct Model {
    std::vector<Kind> kinds;
    std::vector<Drive> drives;
    std::vector<ThreadForm> forms;
    std::vector<Thread> threads;
    std::vector<Grade> grades;
    std::vector<Friction> frictions;
    std::vector<Timing> timings;
    std::vector<ToolKind> tool_kinds;
    std::vector<Gear> gear;
    std::vector<RatingPart> rating_parts;
    std::vector<Sign> signs;
    std::vector<Hazard> hazards;
    Device device; // device.span is unknown when none is declared
    std::vector<Item> items;
    std::vector<ItemCaution> cautions;
    std::vector<Assumption> assumptions; // in order of declaration
    std::vector<Function> functions;
    std::vector<Guide> guides;
    std::uint32_t slot_count = 0;
    std::uint32_t member_count = 0;

    [[nodiscard]] const Kind& kind(KindId id) const { return kinds[id.value]; }
    [[nodiscard]] const Item& item(ItemId id) const { return items[id.value]; }
    [[nodiscard]] const Kind& kind_of(ItemId id) const { return kinds[items[id.value].kind.value]; }
    [[nodiscard]] const Guide& guide(GuideId id) const { return guides[id.value]; }
};

// Variants that exist: a device without any has one, nameless.
std::size_t variant_count(const Model& model);
// The names of the variants of a mask; empty when it holds them all.
std::vector<std::string> variant_names(const Model& model, VariantMask mask);

} // namespace matchmark::model
