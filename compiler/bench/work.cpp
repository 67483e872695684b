// Carries a guide's actions out on the bench.
#include "bench/work.hpp"

#include "model/fitting.hpp"

#include <algorithm>
#include <optional>

namespace matchmark::bench {

using model::Action;
using model::ActionSort;

bool supplied(const Model& model, const Resources& resources, const Action& action, ItemId item) {
    return std::any_of(action.with.begin(), action.with.end(), [&](model::ResourceId id) {
        return model::serves(model, resources[id.value], item);
    });
}

Act act_of(const Model& model, const Resources& resources, const Action& action,
           const model::Target& target) {
    return {target.ref.item, target.verb, target.ref.members,
            supplied(model, resources, action, target.ref.item)};
}

namespace {

void flag_members(const Model& model, State& state, const model::ItemRef& ref, std::uint8_t set,
                  std::uint8_t clear) {
    const model::Item& item = model.item(ref.item);
    const std::size_t count = ref.members.empty() ? item.count : ref.members.size();
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t member = ref.members.empty() ? i : ref.members[i] - 1U;
        auto& flags = state.flags[item.first_member + member];
        flags = static_cast<std::uint8_t>((flags | set) & ~clear);
    }
}

// The outermost state of the set that is safe for a hazard; none: the set is not about danger.
std::optional<StateId> as_it_comes(const model::Kind& kind, unsigned set) {
    for (std::size_t i = kind.states.size(); i-- > 0;) {
        const auto state = static_cast<StateId>(i);
        const bool safe =
            std::any_of(kind.hazards.begin(), kind.hazards.end(), [&](const model::HazardUse& use) {
                return model::contains(use.safe, state);
            });
        if (kind.set_of[i] == set && safe)
            return state;
    }
    return std::nullopt;
}

} // namespace

void take_new_ones(const Bench& bench, State& state, const model::ItemRef& ref) {
    const Model& model = *bench.model;
    const model::Item& item = model.item(ref.item);
    const model::Kind& kind = model.kind(item.kind);
    for (unsigned set = 1; set < kind.set_count(); ++set) {
        const auto comes = as_it_comes(kind, set);
        if (!comes)
            continue;
        for (std::uint16_t member = 0; member < item.count; ++member) {
            const auto& named = ref.members;
            if (named.empty() || std::find(named.begin(), named.end(), member + 1U) != named.end())
                state.slots[slot(model, ref.item, member, set)] = *comes;
        }
    }
}

void note(const Bench& bench, State& state, const Action& action) {
    const Model& model = *bench.model;
    for (const model::Target& target : action.targets) {
        switch (action.sort) {
        case ActionSort::replace:
            flag_members(model, state, target.ref, renewed, spent);
            take_new_ones(bench, state, target.ref);
            break;
        case ActionSort::mark:
            flag_members(model, state, target.ref, marked, 0);
            break;
        case ActionSort::dispose:
            flag_members(model, state, target.ref, disposed, 0);
            break;
        case ActionSort::scrap:
        case ActionSort::leave_off:
            flag_members(model, state, target.ref, given_up, 0);
            break;
        case ActionSort::verb:
        case ActionSort::measure:
        case ActionSort::do_guide:
            break;
        }
    }
}

std::vector<ItemId> renewed_by(const std::vector<model::Step>& steps) {
    std::vector<ItemId> items;
    for (const model::Step& step : steps) {
        for (const Action& action : step.actions) {
            if (action.sort != ActionSort::replace)
                continue;
            for (const model::Target& target : action.targets)
                items.push_back(target.ref.item);
        }
    }
    return items;
}

void carry_out(const Bench& bench, State& state, const Resources& resources, const Action& action) {
    if (action.sort != ActionSort::verb) {
        note(bench, state, action);
        return;
    }
    for (const model::Target& target : action.targets) {
        perform(bench, state, act_of(*bench.model, resources, action, target));
    }
}

void copy_item(const Model& model, ItemId id, const State& from, State& to) {
    const model::Item& item = model.item(id);
    const std::size_t slots = item.count * model.kind(item.kind).set_count();
    std::copy_n(from.slots.begin() + item.first_slot, slots, to.slots.begin() + item.first_slot);
    std::copy_n(from.flags.begin() + item.first_member, item.count,
                to.flags.begin() + item.first_member);
}

bool any_flag(const Model& model, const State& state, ItemId id, std::uint8_t flag) {
    const model::Item& item = model.item(id);
    for (std::uint16_t member = 0; member < item.count; ++member) {
        if ((state.flags[item.first_member + member] & flag) != 0)
            return true;
    }
    return false;
}

bool every_flag(const Model& model, const State& state, const model::ItemRef& ref,
                std::uint8_t flag) {
    const model::Item& item = model.item(ref.item);
    const std::size_t count = ref.members.empty() ? item.count : ref.members.size();
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t member = ref.members.empty() ? i : ref.members[i] - 1U;
        if ((state.flags[item.first_member + member] & flag) == 0)
            return false;
    }
    return true;
}

} // namespace matchmark::bench
