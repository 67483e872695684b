// The way to a part, act by act: what a drawing numbers.
#include "draw/way.hpp"

#include "bench/missing.hpp"
#include "language/words.hpp"

#include <algorithm>

namespace matchmark::draw {

using language::fill_text;
using language::said;
using model::ItemId;
using model::Model;
using model::Role;

namespace {

model::StateSet first_set(const model::Kind& kind) {
    model::StateSet states = 0;
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        if (kind.set_of[i] == 0) {
            states |= model::in_set(static_cast<model::StateId>(i));
        }
    }
    return states;
}

// The states in which an item no longer stands in the way, of its first set.
model::StateSet freed(const Model& model, ItemId id) {
    const model::Kind& kind = model.kind_of(id);
    const Role role = model.item(id).role;
    if (role == Role::part) {
        return first_set(kind) & ~kind.present;
    }
    return first_set(kind) & ~(model::is_tie(role) ? kind.binds : model::in_set(kind.set_first[0]));
}

bench::Bench bench_with(const Model& model, ItemId item) {
    bench::Bench bench{&model, 0};
    while (bench.variant + 1 < model::variant_count(model) && !bench.exists(item)) {
        ++bench.variant;
    }
    return bench;
}

// A plug is pulled before anything is opened: OSHA 29 CFR 1910.147(d), isolation first. The acts
// stay as they were where the bench does not let it be.
std::vector<bench::Act> outside_first(const bench::Bench& bench,
                                      const std::vector<bench::Act>& acts) {
    std::vector<bench::Act> order;
    std::vector<bench::Act> later;
    bench::State state = bench::assembled(bench);
    const auto did = [&](const bench::Act& act) {
        if (bench::refusal(bench, state, act)) {
            return false;
        }
        bench::perform(bench, state, act);
        order.push_back(act);
        return true;
    };
    for (const bench::Act& act : acts) {
        if (!bench.model->kind_of(act.item).verbs[act.verb].from_outside || !did(act)) {
            later.push_back(act);
        }
    }
    return std::all_of(later.begin(), later.end(), did) ? order : acts;
}

WayStep step_of(const Model& model, const model::ItemRef& ref, const std::string& verb,
                const language::Language& in) {
    if (language::is_english(in)) {
        return {ref.item, language::spaced(verb) + " " + said(in, model, ref)};
    }
    return {ref.item,
            fill_text(language::verb_pattern(in, verb), {{"the items", said(in, model, ref)},
                                                         {"items", said(in, model, ref, false)},
                                                         {"how", ""}})};
}

// The states to which the action brings the target: for one that is renewed, those in which it is
// out of the way.
model::StateSet brought_to(const Model& model, const model::Action& action,
                           const model::Target& target) {
    if (action.sort == model::ActionSort::verb) {
        return model::in_set(model.kind_of(target.ref.item).verbs[target.verb].to);
    }
    return action.sort == model::ActionSort::replace ? freed(model, target.ref.item) : 0;
}

// Those of its first set in which an item is not as the assembled device has it, and those in which
// a danger of it is made safe.
model::StateSet changed(const Model& model, ItemId id) {
    const model::Kind& kind = model.kind_of(id);
    model::StateSet states = first_set(kind) & ~model::in_set(kind.set_first[0]);
    for (const model::HazardUse& hazard : kind.hazards) {
        states |= hazard.safe;
    }
    return states;
}

} // namespace

std::vector<WayStep> way_to(const Model& model, ItemId item, const language::Language& in) {
    const bench::Bench bench = bench_with(model, item);
    const auto acts = bench::bring_to(bench, bench::assembled(bench), item, freed(model, item),
                                      [](std::uint32_t) { return model::StateSet{0}; });
    std::vector<WayStep> steps;
    if (!acts) {
        return steps;
    }
    for (const bench::Act& act : outside_first(bench, *acts)) {
        const model::Verb& verb = model.kind_of(act.item).verbs[act.verb];
        steps.push_back(step_of(model, {act.item, act.members, {}}, verb.name, in));
    }
    return steps;
}

std::vector<WayStep> way_in_guide(const Model& model, const model::Procedure& procedure,
                                  ItemId item, const language::Language& in) {
    const bench::Bench bench = bench_with(model, item);
    std::vector<WayStep> steps;
    for (const model::Step& step : procedure.steps) {
        for (const model::Action& action : step.actions) {
            for (const model::Target& target : action.targets) {
                const ItemId id = target.ref.item;
                const model::StateSet states = brought_to(model, action, target);
                if (!bench.exists(id) || (states & changed(model, id)) == 0) {
                    continue;
                }
                steps.push_back(step_of(model, target.ref, action.verb, in));
                if (id == item && (states & freed(model, id)) != 0) {
                    return steps;
                }
            }
        }
    }
    return {};
}

} // namespace matchmark::draw
