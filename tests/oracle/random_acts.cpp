// Makes rows of acts that lead to as many different states of a device as chance will have it.
#include "oracle/random_acts.hpp"

#include "bench/work.hpp"
#include "support/random_model.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::oracle {

namespace {

using bench::Bench;
using bench::State;
using model::Action;
using model::Item;
using model::ItemId;
using model::Kind;
using model::Model;
using support::Chance;

constexpr std::size_t most_items = 22;
constexpr std::size_t longest_row = 14;

// What random_model leaves out, because a plan does not ask for it: things that serve once, what is
// laid first, verbs that are safe on a live device.
void vary(Chance& chance, Model& model) {
    model.hazards.edit().emplace_back();
    model.hazards.edit().back().name = "danger";
    for (std::size_t k = 0; k < model.kinds.size(); ++k) {
        Kind& kind = model.kinds.edit(k);
        kind.name = fmt::format("kind-{}", k);
        kind.laid_first = kind.role == model::Role::bond && chance.one_in(2);
        kind.lies_loose = kind.role == model::Role::bond && chance.one_in(2);
        kind.clamped = kind.role == model::Role::connector && chance.one_in(2);
        for (model::Verb& verb : kind.verbs)
            verb.safe_when_live = chance.one_in(12);
        for (model::HazardUse& use : kind.hazards)
            use.hazard = model::HazardId{0};
    }
    for (Item& item : model.items.edit()) {
        item.one_use = chance.one_in(5);
        item.safe_when_live = chance.one_in(15);
    }
}

// A spare for each thing, so that a line may bring a new one.
std::vector<model::Resource> spares(const Model& model) {
    std::vector<model::Resource> list;
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        model::Resource spare;
        spare.sort = model::ResourceSort::spare;
        spare.name = spare.text = fmt::format("spare-{}", i);
        spare.for_items = {ItemId{i}};
        list.push_back(std::move(spare));
    }
    return list;
}

// Some act that starts from a state in which its item stands; now and then any act at all.
Action some_action(Chance& chance, const Bench& bench, const State& state) {
    const Model& model = *bench.model;
    const bool any = chance.one_in(8);
    for (;;) {
        const ItemId id{static_cast<std::uint32_t>(chance.below(model.items.size()))};
        const Item& item = model.item(id);
        const Kind& kind = model.kind(item.kind);
        const auto verb = static_cast<std::uint16_t>(chance.below(kind.verbs.size()));
        const auto member = static_cast<std::uint16_t>(chance.below(item.count));
        const auto found =
            bench::state_of(bench, state, id, member, kind.set_of[kind.verbs[verb].to]);
        if (!any && !model::contains(kind.verbs[verb].from, found))
            continue;
        Action action;
        action.verb = kind.verbs[verb].name;
        model::Target target;
        target.ref.item = id;
        target.verb = verb;
        if (item.count > 1 && chance.one_in(2))
            target.ref.members = {static_cast<std::uint16_t>(member + 1)};
        action.targets = {target};
        if (chance.one_in(3))
            action.with = {model::ResourceId{id.value}};
        return action;
    }
}

// Most acts on a whole device are refused because something is in the way: the other reasons are
// to have their turn.
Action last_action(Chance& chance, const Bench& bench, const State& state,
                   const bench::Resources& resources) {
    constexpr int tries = 8;
    Action action;
    for (int i = 0; i < tries; ++i) {
        action = some_action(chance, bench, state);
        const auto refused = bench::refusal(
            bench, state, bench::act_of(*bench.model, resources, action, action.targets.front()));
        if (refused && !std::holds_alternative<bench::OutOfReach>(*refused))
            break;
    }
    return action;
}

model::Procedure row(Chance& chance, const Bench& bench, std::size_t& acts) {
    model::Procedure made;
    made.guide = model::GuideId{0};
    made.resources = spares(*bench.model);
    model::Step step;
    step.name = "row";
    State state = bench::assembled(bench);
    const std::size_t length = chance.below(longest_row);
    for (std::size_t tries = 0; step.actions.size() < length && tries < 20 * length; ++tries) {
        Action action = some_action(chance, bench, state);
        const auto act =
            bench::act_of(*bench.model, made.resources, action, action.targets.front());
        if (bench::refusal(bench, state, act))
            continue;
        bench::carry_out(bench, state, made.resources, action);
        step.actions.edit().push_back(std::move(action));
    }
    step.actions.edit().push_back(last_action(chance, bench, state, made.resources));
    acts += step.actions.size();
    made.steps.push_back(std::move(step));
    return made;
}

} // namespace

RandomRows random_rows(Chance& chance, std::size_t rows) {
    RandomRows made;
    made.model = random_model::random_device(chance, most_items);
    vary(chance, made.model);
    made.model.device.name = "random";
    made.model.guides.edit().emplace_back();
    made.model.guides.edit().back().name = "acts";
    const Bench bench{&made.model, 0};
    for (std::size_t i = 0; i < rows; ++i)
        made.rows.push_back(row(chance, bench, made.acts));
    return made;
}

} // namespace matchmark::oracle
