// Goes the way back once on the bench, and makes safe what it meets.
#include "plan/made_safe.hpp"

#include "bench/exposure.hpp"
#include "bench/missing.hpp"
#include "plan/way_in/tasks.hpp"

namespace matchmark::plan {

using model::contains;
using model::Kind;
using model::Model;

namespace {

// The first danger that the way back would meet, from this state on. What may stay as it is has no
// way back.
std::optional<bench::Exposure> met_on_the_way_back(const bench::Bench& on, const WayIn& way,
                                                   bench::State state) {
    const Model& model = *on.model;
    for (std::size_t i = way.acts.size(); i-- > 0;) {
        const PlannedAct& planned = way.acts[i];
        const Kind& kind = model.kind_of(planned.act.item);
        const auto back = bench::reversed(model, planned.act, planned.from);
        if (!back || contains(kind.may_end, kind.verbs[planned.act.verb].to))
            continue;
        const bench::State before = state;
        bench::perform(on, state, *back);
        if (const auto met = bench::exposure(on, before, state, *back))
            return met;
    }
    return std::nullopt;
}

} // namespace

WayIn made_safe(const bench::Bench& on, WayIn way) {
    const Model& model = *on.model;
    bench::State state = bench::assembled(on);
    for (const PlannedAct& planned : way.acts)
        bench::perform(on, state, planned.act);
    const auto no_wish = [](std::uint32_t) { return model::StateSet{0}; };
    while (const auto met = met_on_the_way_back(on, way, state)) {
        const auto acts = bench::bring_to(on, state, met->item,
                                          model.kind_of(met->item).hazards[met->use].safe, no_wish);
        if (!acts || acts->empty())
            return way;
        for (const bench::Act& act : *acts) {
            const Kind& kind = model.kind_of(act.item);
            const model::Verb& verb = kind.verbs[act.verb];
            const auto tools = tools_for(model, model.item(act.item), verb);
            const std::uint16_t member = act.members.empty()
                                             ? std::uint16_t{0}
                                             : static_cast<std::uint16_t>(act.members[0] - 1U);
            way.acts.push_back({act,
                                bench::state_of(on, state, act.item, member, kind.set_of[verb.to]),
                                0, 0, tools.empty() ? std::string() : tools.front()});
            bench::perform(on, state, act);
        }
    }
    return way;
}

} // namespace matchmark::plan
