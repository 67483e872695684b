// What burns let out, or filled in, beside what sets it on fire: petrol drained beside a hot
// exhaust.
#include "check/to_safety.hpp"
#include "check/troubles.hpp"

#include "bench/dangerous.hpp"
#include "bench/missing.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::Hazard;
using model::HazardUse;
using model::ItemId;

const Hazard& hazard_of(const Walk& walk, const HazardUse& use) {
    return walk.model.hazards[use.hazard.value];
}

// The hazard of the fluid that the act lets out or fills in, if anything lights it.
const Hazard* may_burn(const Walk& walk, const Event& event) {
    const model::Kind& kind = walk.model.kind_of(event.act->item);
    if (kind.role != model::Role::fluid)
        return nullptr;
    const unsigned set = kind.set_of[kind.verbs[event.act->verb].to];
    for (const HazardUse& use : kind.hazards) {
        const Hazard& hazard = hazard_of(walk, use);
        if (!hazard.lit_by.empty() && (use.safe & model::states_of_set(kind, set)) != 0)
            return &hazard;
    }
    return nullptr;
}

// What lights it and is not made safe, fluids apart: each burns, but none is the spark.
const HazardUse* lights(const Walk& walk, const bench::State& state, const Hazard& burning,
                        ItemId item) {
    const model::Kind& kind = walk.model.kind_of(item);
    if (kind.role == model::Role::fluid || !bench::present(walk.bench, state, item))
        return nullptr;
    for (const HazardUse& use : kind.hazards) {
        const auto& by = burning.lit_by;
        if (std::find(by.begin(), by.end(), hazard_of(walk, use).name) != by.end() &&
            !bench::made_safe(walk.bench, state, item, use.safe))
            return &use;
    }
    return nullptr;
}

Diagnostic lit(const Walk& walk, std::size_t at, const Hazard& burning, ItemId item,
               const HazardUse& use) {
    const model::Kind& kind = walk.model.kind_of(item);
    Diagnostic finding = finding_at(
        walk, at, fmt::format("{}: {} not made safe", burning.title, item_is(walk, item)));
    finding.label = fmt::format("{} can light it", model::quoted(walk.model, item));
    finding.why = fmt::format("it must be {} before this", model::states_in_words(kind, use.safe));
    finding.related.push_back({walk.model.item(item).span, "lights it until then"});
    const auto acts =
        bench::bring_to(walk.bench, walk.state_at(at), item, use.safe, wish_from(walk, at));
    if (acts)
        mend_with(walk, finding, at, *acts, made_safe_later(walk, at, item, use.safe));
    return finding;
}

// What the guide comes too near to, not made safe, for other reasons: that is told there, and one
// omission is one finding.
std::vector<ItemId> met_elsewhere(const Walk& walk) {
    std::vector<ItemId> met;
    each_objection<bench::Exposure>(
        walk, [&](const Trouble&, const bench::Exposure& danger) { met.push_back(danger.item); });
    return met;
}

void find_lit_nearby(const Walk& walk, std::vector<Diagnostic>& findings) {
    std::vector<ItemId> told = met_elsewhere(walk);
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const Hazard* burning = walk.events[at].act ? may_burn(walk, walk.events[at]) : nullptr;
        if (burning == nullptr)
            continue;
        for (const ItemId item : walk.dangers.items) {
            const HazardUse* use = lights(walk, walk.state_at(at), *burning, item);
            if (use == nullptr || among(told, item))
                continue;
            told.push_back(item);
            findings.push_back(lit(walk, at, *burning, item, *use));
        }
    }
}

} // namespace

extern const Rule lit_nearby;
const Rule lit_nearby{"lit-nearby", "hazard", Severity::warning,
                      "what burns let out or filled in beside what sets it on fire",
                      find_lit_nearby};

} // namespace matchmark::check::rules
