// The way to a part, act by act: what a drawing numbers.
#include "draw/way.hpp"

#include "bench/dangerous.hpp"
#include "bench/missing.hpp"
#include "language/words.hpp"

#include <algorithm>
#include <utility>

namespace matchmark::draw {

using language::fill_text;
using language::said;
using model::ItemId;
using model::Model;
using model::Role;

namespace {

// The states in which an item no longer stands in the way, of its first set.
model::StateSet freed(const Model& model, ItemId id) {
    const model::Kind& kind = model.kind_of(id);
    const Role role = model.item(id).role;
    if (role == Role::part) {
        return model::states_of_set(kind, 0) & ~kind.present;
    }
    return model::states_of_set(kind, 0) &
           ~(model::is_tie(role) ? kind.binds : model::in_set(kind.set_first[0]));
}

bench::Bench bench_with(const Model& model, ItemId item) {
    bench::Bench bench{&model, 0};
    while (bench.variant + 1 < model::variant_count(model) && !bench.exists(item)) {
        ++bench.variant;
    }
    return bench;
}

constexpr std::size_t most_acts = 2000; // of one way, so that a ring of dangers comes to an end

model::StateSet no_wish(std::uint32_t /*slot*/) { return 0; }

// The acts on the bench one after the other, and what they would meet.
class Going {
public:
    Going(const bench::Bench& bench, bench::Dangers dangers)
        : bench_(bench), dangers_(std::move(dangers)), state_(dangers_.start) {}

    // With what makes safe right before the act that would meet it. What can be made safe only
    // behind that act, or not at all, is left out of the dangers.
    bool go_safely(const std::vector<bench::Act>& acts);
    // What is done from outside as early as can be. False where the bench does not let it be, or a
    // danger would be met that is not met in the order given.
    bool go_outside_first(std::vector<bench::Act> left);

    [[nodiscard]] const std::vector<bench::Act>& done() const { return done_; }
    [[nodiscard]] const bench::Dangers& dangers() const { return dangers_; }

private:
    [[nodiscard]] std::optional<bench::Exposure> met_by(const bench::Act& act) const {
        bench::State after = state_;
        bench::perform(bench_, after, act);
        return bench::exposure(bench_, state_, after, act, dangers_);
    }
    void perform(const bench::Act& act) {
        bench::perform(bench_, state_, act);
        done_.push_back(act);
    }
    bool did(const bench::Act& act) {
        const bool can = !bench::refusal(bench_, state_, act) && !met_by(act);
        if (can) {
            perform(act);
        }
        return can;
    }
    // What makes safe what the act meets. Nothing where that was tried and the act comes up again.
    std::vector<bench::Act> make_safe(const bench::Act& act, const bench::Exposure& met) {
        const std::pair<bench::Act, ItemId> now{act, met.item};
        if (std::find(met_.begin(), met_.end(), now) != met_.end()) {
            return {};
        }
        met_.push_back(now);
        const auto& hazard = bench_.model->kind_of(met.item).hazards[met.use];
        return bench::bring_to(bench_, state_, met.item, hazard.safe, no_wish)
            .value_or(std::vector<bench::Act>{});
    }
    // Is the item there already, or further out, for the sake of safety? States are declared
    // outwards.
    [[nodiscard]] bool done_before(const bench::Act& act, const bench::Refusal& refused) const {
        const auto* wrong = std::get_if<bench::WrongState>(&refused);
        return wrong != nullptr &&
               wrong->found >= bench_.model->kind_of(act.item).verbs[act.verb].to;
    }

    const bench::Bench& bench_;
    bench::Dangers dangers_;
    bench::State state_;
    std::vector<bench::Act> done_;
    std::vector<std::pair<bench::Act, ItemId>> met_;
};

bool Going::go_safely(const std::vector<bench::Act>& acts) {
    std::vector<bench::Act> left(acts.rbegin(), acts.rend()); // the next one last
    while (!left.empty() && done_.size() + left.size() <= most_acts) {
        const bench::Act act = left.back();
        const auto refused = bench::refusal(bench_, state_, act);
        if (refused && done_before(act, *refused)) {
            left.pop_back();
            continue;
        }
        std::vector<bench::Act> first;
        if (refused) {
            first = bench::missing_for(bench_, state_, act, *refused, no_wish);
            if (first.empty()) {
                return false;
            }
        } else if (const auto met = met_by(act)) {
            first = make_safe(act, *met);
            if (first.empty()) {
                std::erase(dangers_.items, met->item);
                continue; // it may meet others too
            }
        }
        if (first.empty()) {
            perform(act);
            left.pop_back();
        }
        left.insert(left.end(), first.rbegin(), first.rend());
    }
    return left.empty();
}

bool Going::go_outside_first(std::vector<bench::Act> left) {
    const auto take = [&](auto wanted) {
        for (auto next = left.begin(); next != left.end();) {
            const model::Verb& verb = bench_.model->kind_of(next->item).verbs[next->verb];
            if (verb.from_outside && wanted(*next, verb) && did(*next)) {
                left.erase(next);
                next = left.begin(); // what was refused before may wait for this one alone
            } else {
                ++next;
            }
        }
    };
    // As a plan has it: supplies, then what passes by itself, then the rest.
    take([&](const bench::Act& act, const model::Verb& /*verb*/) {
        return !bench_.model->item(act.item).feeds.empty();
    });
    take([](const bench::Act& /*act*/, const model::Verb& verb) { return verb.waits.has_value(); });
    take([](const bench::Act& /*act*/, const model::Verb& /*verb*/) { return true; });
    return std::all_of(left.begin(), left.end(), [&](const bench::Act& act) { return did(act); });
}

// What the acts would meet is made safe, and a plug is pulled before anything is opened: OSHA
// 29 CFR 1910.147(d), isolation first. The acts stay as they were where that cannot be.
std::vector<bench::Act> safely(const bench::Bench& bench, const std::vector<bench::Act>& acts) {
    Going as_asked(bench, bench::dangers(bench));
    const std::vector<bench::Act>& safe = as_asked.go_safely(acts) ? as_asked.done() : acts;
    Going in_order(bench, as_asked.dangers());
    return in_order.go_outside_first(safe) ? in_order.done() : safe;
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
    model::StateSet states = model::states_of_set(kind, 0) & ~model::in_set(kind.set_first[0]);
    for (const model::HazardUse& hazard : kind.hazards) {
        states |= hazard.safe;
    }
    return states;
}

} // namespace

std::vector<WayStep> way_to(const Model& model, ItemId item, const language::Language& in) {
    const bench::Bench bench = bench_with(model, item);
    const auto acts =
        bench::bring_to(bench, bench::assembled(bench), item, freed(model, item), no_wish);
    std::vector<WayStep> steps;
    if (!acts) {
        return steps;
    }
    for (const bench::Act& act : safely(bench, *acts)) {
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
