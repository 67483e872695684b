// Takes steps and actions apart into events.
#include "check/events.hpp"

#include "bench/lifted_after.hpp"

namespace matchmark::check {

using bench::Act;
using model::Action;
using model::ActionSort;

namespace {

bool in_variant(const Walk& walk, model::VariantMask mask) {
    return ((mask >> walk.bench.variant) & 1U) != 0;
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
    for (std::size_t s = 0; s < steps.size(); ++s) {
        if (!in_variant(walk, steps[s].variants))
            continue;
        if (steps[s].is_test)
            walk.events.push_back({s, std::nullopt, 0, std::nullopt});
        for (std::size_t a = 0; a < steps[s].actions.size(); ++a) {
            const Action& action = steps[s].actions[a];
            if (!in_variant(walk, action.variants))
                continue;
            if (action.sort != ActionSort::verb) {
                walk.events.push_back({s, a, 0, std::nullopt});
                continue;
            }
            for (std::size_t t = 0; t < action.targets.size(); ++t) {
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
