// Takes steps and actions apart into events.
#include "check/events.hpp"

#include "bench/lifted_after.hpp"

#include <algorithm>

namespace matchmark::check {

using bench::Act;
using model::Action;
using model::ActionSort;

namespace {

bool in_variant(const Walk& walk, model::VariantMask mask) {
    return ((mask >> walk.bench.variant) & 1U) != 0;
}

std::size_t most_events(const model::Procedure& procedure) {
    std::size_t count = 0;
    for (const model::Step& step : procedure.steps) {
        count += step.is_test ? 1U : 0U;
        for (const Action& action : step.actions)
            count += std::max<std::size_t>(1, action.targets.size());
    }
    return count;
}

void note_what_is_lifted_after(Walk& walk) {
    std::vector<Act*> acts;
    for (Event& event : walk.events) {
        if (event.act)
            acts.push_back(&*event.act);
    }
    bench::note_lifted_after(walk.bench, acts);
}

} // namespace

void list_events(Walk& walk) {
    const auto& steps = walk.procedure.steps;
    walk.events.reserve(most_events(walk.procedure));
    for (std::uint32_t s = 0; s < steps.size(); ++s) {
        if (!in_variant(walk, steps[s].variants))
            continue;
        if (steps[s].is_test)
            walk.events.push_back({s, std::nullopt, 0, std::nullopt});
        for (std::uint32_t a = 0; a < steps[s].actions.size(); ++a) {
            const Action& action = steps[s].actions[a];
            if (!in_variant(walk, action.variants))
                continue;
            if (action.sort != ActionSort::verb) {
                walk.events.push_back({s, a, 0, std::nullopt});
                continue;
            }
            for (std::uint32_t t = 0; t < action.targets.size(); ++t) {
                if (!walk.bench.exists(action.targets[t].ref.item))
                    continue;
                Act act =
                    bench::act_of(walk.model, walk.procedure.resources, action, action.targets[t]);
                walk.events.push_back({s, a, t, std::move(act)});
            }
        }
    }
    note_what_is_lifted_after(walk);
}

} // namespace matchmark::check
