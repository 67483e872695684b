// Everything that one compilation knows, as every phase reads it.
#pragma once

#include "model/guide_source.hpp"
#include "model/shared_list.hpp"
#include "model/thread.hpp"
#include "model/timing.hpp"

#include <string>
#include <vector>

namespace matchmark::model {

struct Model {
    SharedList<Kind> kinds;
    SharedList<Drive> drives;
    SharedList<ThreadForm> forms;
    SharedList<Thread> threads;
    SharedList<Grade> grades;
    SharedList<Friction> frictions;
    SharedList<Timing> timings;
    SharedList<ToolKind> tool_kinds;
    SharedList<Gear> gear;
    SharedList<RatingPart> rating_parts;
    SharedList<Sign> signs;
    SharedList<Hazard> hazards;
    Device device; // device.span is unknown when none is declared
    SharedList<Item> items;
    SharedList<ItemId> sources;      // the items that feed others, in order of declaration
    SharedList<KindId> source_kinds; // theirs, each once
    SharedList<KindId> other_kinds;  // of all items but parts that feed others, each once
    SharedList<ItemCaution> cautions;
    SharedList<Assumption> assumptions; // in order of declaration
    SharedList<Function> functions;
    SharedList<Guide> guides;
    std::uint32_t slot_count = 0;
    std::uint32_t member_count = 0;

    [[nodiscard]] const Kind& kind(KindId id) const { return kinds[id.value]; }
    [[nodiscard]] const Item& item(ItemId id) const { return items[id.value]; }
    [[nodiscard]] const Kind& kind_of(ItemId id) const { return kinds[items[id.value].kind.value]; }
    [[nodiscard]] const Guide& guide(GuideId id) const { return guides[id.value]; }
};

// Is it the other, or `in` it, however deep?
bool is_in(const Model& model, ItemId item, ItemId carrier);
// Variants that exist: a device without any has one, nameless.
std::size_t variant_count(const Model& model);
// The names of the variants of a mask; empty when it holds them all.
std::vector<std::string> variant_names(const Model& model, VariantMask mask);

} // namespace matchmark::model
