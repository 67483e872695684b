// Follows a guide on the bench, in every variant that it is for, so that the reader is told what
// matters at each step.
#include "plan/reader/walk.hpp"

#include "bench/dangerous.hpp"
#include "bench/running.hpp"
#include "model/fitting.hpp"

#include <algorithm>

namespace matchmark::plan {

using model::Action;
using model::ItemId;
using model::Kind;
using model::Model;
using model::Target;
using model::Verb;

namespace {

// How many members of the target will move: those named (or all) that stand in the verb's
// from-states.
std::size_t moving(const bench::Bench& bench, const bench::State& state, const Target& target) {
    const Kind& kind = bench.model->kind_of(target.ref.item);
    const Verb& verb = kind.verbs[target.verb];
    const unsigned set = kind.set_of[verb.to];
    std::size_t count = 0;
    for (std::uint16_t i = 0; i < bench.model->item(target.ref.item).count; ++i) {
        const auto& named = target.ref.members;
        const bool meant =
            named.empty() || std::find(named.begin(), named.end(), i + 1) != named.end();
        const auto found = bench::state_of(bench, state, target.ref.item, i, set);
        count += meant && model::contains(verb.from, found) ? 1 : 0;
    }
    return count;
}

// The tool that the action names for the verb, or else the first on the list that fits. Empty: by
// hand.
std::string tool_of(const Model& model, const bench::Resources& resources, const Action& action,
                    const Target& target) {
    const model::Item& item = model.item(target.ref.item);
    const Verb& verb = model.kind(item.kind).verbs[target.verb];
    const auto is_tool = [&](model::ResourceId id) {
        return resources[id.value].sort == model::ResourceSort::tool &&
               model::tool_fits(model, resources[id.value], item, verb);
    };
    const auto named = std::find_if(action.with.begin(), action.with.end(), is_tool);
    if (named != action.with.end())
        return resources[named->value].name;
    if (!model::asks_tool(verb))
        return {};
    const auto fitting = model::fitting_tools(model, resources, item, verb);
    return fitting.empty() ? std::string() : resources[fitting.front().value].name;
}

// Adds what one verb on one item takes in one variant.
void add_time(ReaderWalk& walk, std::size_t variant, const bench::Resources& resources,
              const Action& action, const Target& target) {
    const bench::Bench& bench = walk.benches[variant];
    const model::Item& item = bench.model->item(target.ref.item);
    const Verb& verb = bench.model->kind(item.kind).verbs[target.verb];
    const std::size_t count = moving(bench, walk.states[variant], target);
    if (count == 0)
        return;
    ActTime time = walk.times.act(item.kind, target.verb, count);
    walk.hands[variant].take(walk.times, tool_of(*bench.model, resources, action, target),
                             face_of(item, verb), time);
    walk.seconds[variant] += time.labour();
    // What cures or drains side by side is waited for once.
    walk.waiting[variant] += walk.hands[variant].wait(
        target.ref.item, action.duration && verb.waits ? action.duration->base : time.waits);
    walk.timed = walk.timed || verb.takes || !time.by_kind;
}

// The time that a line states is worked through, a tap held open for it, or waited for, where its
// verb waits.
bool is_worked_through(const bench::Bench& bench, const Action& action) {
    return action.duration &&
           std::none_of(action.targets.begin(), action.targets.end(), [&](const Target& target) {
               const model::Kind& kind = bench.model->kind_of(target.ref.item);
               return action.sort == model::ActionSort::verb && kind.verbs[target.verb].waits;
           });
}

} // namespace

ReaderWalk start_walk(const Model& model, model::VariantMask variants) {
    ReaderWalk walk{WorkTimes(model)};
    for (unsigned variant = 0; variant < model::variant_count(model); ++variant) {
        if (((variants >> variant) & 1U) != 0) {
            walk.benches.push_back({&model, variant});
            walk.states.push_back(bench::assembled(walk.benches.back()));
            walk.hands.emplace_back();
            walk.seconds.push_back(0);
            walk.waiting.push_back(0);
        }
    }
    return walk;
}

void follow(ReaderWalk& walk, const bench::Resources& resources, const Action& action) {
    for (std::size_t i = 0; i < walk.benches.size(); ++i) {
        const bench::Bench& bench = walk.benches[i];
        if (((action.variants >> bench.variant) & 1U) == 0) {
            continue;
        }
        if (is_worked_through(bench, action)) {
            walk.seconds[i] += action.duration->base;
        }
        for (const Target& target : action.targets) {
            if (action.sort != model::ActionSort::verb || !bench.exists(target.ref.item)) {
                continue;
            }
            add_time(walk, i, resources, action, target);
        }
        bench::carry_out(bench, walk.states[i], resources, action);
    }
}

void follow_test(ReaderWalk& walk, const model::Procedure& procedure, const model::Step& step) {
    if (!step.is_test)
        return;
    const auto renewed = bench::renewed_by(procedure.steps);
    for (std::size_t i = 0; i < walk.benches.size(); ++i) {
        if (((step.variants >> walk.benches[i].variant) & 1U) != 0)
            bench::run(walk.benches[i], walk.states[i], step, renewed);
    }
}

bool any_holds(const ReaderWalk& walk, const std::vector<model::Condition>& conditions) {
    for (std::size_t i = 0; i < walk.benches.size(); ++i) {
        const bool all = std::all_of(
            conditions.begin(), conditions.end(), [&](const model::Condition& condition) {
                return walk.benches[i].exists(condition.item.item) &&
                       bench::holds(walk.benches[i], walk.states[i], condition);
            });
        if (all) {
            return true;
        }
    }
    return false;
}

bool any_unsafe(const ReaderWalk& walk, ItemId item, model::StateSet safe) {
    for (std::size_t i = 0; i < walk.benches.size(); ++i) {
        const bench::Bench& bench = walk.benches[i];
        if (bench.exists(item) && !bench::made_safe(bench, walk.states[i], item, safe)) {
            return true;
        }
    }
    return false;
}

bool any_reaches(const ReaderWalk& walk, ItemId item) {
    for (std::size_t i = 0; i < walk.benches.size(); ++i) {
        if (walk.benches[i].exists(item) &&
            bench::reachable(walk.benches[i], walk.states[i], item)) {
            return true;
        }
    }
    return false;
}

} // namespace matchmark::plan
