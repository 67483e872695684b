// Gathers the counts of each part, what the parts wait for, and the index.
#include "appraise/appraise.hpp"

#include "appraise/part_facts.hpp"
#include "model/describe.hpp"

#include <algorithm>
#include <tuple>

namespace matchmark::appraise {

using guide::Appraisal;
using guide::PartAppraisal;
using guide::WayFound;
using model::ItemId;

namespace {

// What an act moves; to make a thing safe moves nothing.
bool moves(const model::Model& model, const OrderedAct& act) {
    const model::Kind& kind = model.kind_of(act.act.item);
    return kind.set_of[kind.verbs[act.act.verb].to] == 0;
}

std::vector<guide::WaitedFor> waited_for(const model::Model& model,
                                         const std::vector<PartWay>& ways) {
    std::vector<guide::WaitedFor> rows(model.items.size());
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        rows[i].name = model.items[i].name;
        rows[i].title = model::for_reader(model, ItemId{i}, false);
    }
    for (const PartWay& way : ways) {
        if (!way.shown)
            continue;
        std::vector<bool> seen(model.items.size());
        for (const OrderedAct& act : way.acts) {
            const ItemId item = act.act.item;
            if (item == way.part || seen[item.value] || !moves(model, act))
                continue;
            seen[item.value] = true;
            const std::string& part = model.item(way.part).name;
            rows[item.value].parts.push_back(part);
            const auto& always = way.always_moved;
            if (std::find(always.begin(), always.end(), item) != always.end())
                rows[item.value].always.push_back(part);
        }
    }
    std::erase_if(rows, [](const guide::WaitedFor& row) { return row.parts.empty(); });
    std::stable_sort(rows.begin(), rows.end(), [](const auto& a, const auto& b) {
        return std::make_tuple(a.parts.size(), a.always.size()) >
               std::make_tuple(b.parts.size(), b.always.size());
    });
    return rows;
}

bool is_out(const PartAppraisal& part) {
    return part.way == WayFound::least || part.way == WayFound::bounded;
}

} // namespace

Appraisal appraise(const bench::Bench& bench, const std::vector<PartWay>& ways) {
    const model::Model& model = *bench.model;
    Appraisal result;
    result.device = model.device.name;
    result.title = model.device.title;
    if (bench.variant < model.device.variants.size())
        result.variant = model.device.variants[bench.variant];
    std::optional<IndexFacts> facts = declared_facts(model);
    for (const PartWay& way : ways) {
        const auto counted = fewest_steps(bench, way.acts);
        if (way.shown)
            result.parts.push_back(part_row(model, way, counted));
        const auto part = index_part(model.item(way.part));
        if (facts && part)
            facts->parts[static_cast<std::size_t>(*part)].push_back(
                part_facts(model, way, counted));
    }
    std::stable_sort(result.parts.begin(), result.parts.end(), [](const auto& a, const auto& b) {
        return std::make_tuple(!is_out(a), a.steps.size(), a.acts) <
               std::make_tuple(!is_out(b), b.steps.size(), b.acts);
    });
    result.waited_for = waited_for(model, ways);
    if (facts)
        result.index = repair_index(*facts);
    return result;
}

} // namespace matchmark::appraise
