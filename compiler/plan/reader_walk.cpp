// Follows a guide on the bench, in every variant that it is for, so that the reader is told what
// matters at each step.
#include "plan/reader_walk.hpp"

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

} // namespace

ReaderWalk start_walk(const Model& model, model::VariantMask variants) {
    ReaderWalk walk;
    for (unsigned variant = 0; variant < model::variant_count(model); ++variant) {
        if (((variants >> variant) & 1U) != 0) {
            walk.benches.push_back({&model, variant});
            walk.states.push_back(bench::assembled(walk.benches.back()));
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
        if (action.duration) {
            walk.seconds[i] += action.duration->base;
        }
        for (const Target& target : action.targets) {
            if (action.sort != model::ActionSort::verb || !bench.exists(target.ref.item)) {
                continue;
            }
            const Verb& verb = bench.model->kind_of(target.ref.item).verbs[target.verb];
            const auto count = static_cast<double>(moving(bench, walk.states[i], target));
            // What cures or drains side by side is waited for once.
            if (verb.waits && count > 0)
                walk.waiting[i] += verb.waits->base;
            if (verb.takes) {
                walk.seconds[i] += verb.takes->base * count;
                walk.timed = true;
            }
        }
        bench::carry_out(bench, walk.states[i], resources, action);
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
        if (!bench.exists(item)) {
            continue;
        }
        const Kind& kind = bench.model->kind_of(item);
        for (std::uint16_t member = 0; member < bench.model->item(item).count; ++member) {
            bool is_safe = false;
            for (unsigned set = 0; set < kind.set_count(); ++set) {
                const auto found = bench::state_of(bench, walk.states[i], item, member, set);
                is_safe = is_safe || model::contains(safe, found);
            }
            if (!is_safe) {
                return true;
            }
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
