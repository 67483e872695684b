// Reads from the kinds what comes down with a pressure, and what fills it again.
#include "model/pressed_up.hpp"

#include "model/implied_need.hpp"
#include "model/run_out.hpp"

#include <algorithm>
#include <optional>

namespace matchmark::model {

namespace {

bool is_pressure(const Kind& kind) {
    return kind.role == Role::energy && kind.runs_out && kind.moves && !kind.rests_on_pressure;
}

// Does what presses in the vessel get to the cylinder: is it the same part, does it feed the other,
// or are they joined by what lets through?
bool presses_in(const Model& model, const Item& pressure, ItemId cylinder) {
    if (pressure.carrier == cylinder || among(pressure.feeds, cylinder))
        return true;
    const auto& ties = model.item(cylinder).ties;
    return pressure.carrier.known() && std::any_of(ties.begin(), ties.end(), [&](ItemId tie) {
               return model.kind_of(tie).lets_out && !model.item(tie).lets_nothing_out &&
                      among(parts_behind(model, model.item(tie)), pressure.carrier);
           });
}

// Before the first verb that lets it off the load is down; built up it is, before that is raised.
void wait_for_load(Model& model, ItemId pressure, ItemId load) {
    const auto down = emptied_state(model.kind_of(load));
    const Kind& kind = model.kind_of(pressure);
    for (const Verb& verb : kind.verbs) {
        const bool lets_off = contains(verb.from, kind.set_first.front()) &&
                              kind.set_of[verb.to] == 0 && verb.to != kind.set_first.front();
        if (down && lets_off && !asks_itself(model.item(pressure), verb.name, load))
            model.items.edit(pressure.value)
                .needs.push_back(need_of(model, load, *down, verb.name, NeedOf::load));
    }
}

// The states in which a supply of power is off: nothing of what only a plug inside cuts.
StateSet off_states(const Item& supply, const Kind& kind) {
    const bool drives_pumps = kind.role == Role::energy && !kind.runs_out && supply.through.empty();
    if (!drives_pumps || !cut_from_outside(kind) || !contains(kind.live, kind.set_first.front()))
        return 0;
    return states_of_set(kind, 0) & ~in_set(kind.set_first.front());
}

void wait_for_supply(Model& model, ItemId pressure, ItemId supply) {
    const StateSet off = off_states(model.item(supply), model.kind_of(supply));
    const Kind& kind = model.kind_of(pressure);
    for (const Verb& verb : kind.verbs) {
        const bool lets_off = kind.set_of[verb.to] == 0 && !leads_home(kind, verb) && !verb.waits;
        if (off == 0 || !lets_off || asks_itself(model.item(pressure), verb.name, supply))
            continue;
        Need need = need_of_any(model, supply, off, verb.name, NeedOf::supply);
        need.alone = true;
        model.items.edit(pressure.value).needs.push_back(std::move(need));
    }
}

} // namespace

void settle_pressed_up(Model& model) {
    std::vector<ItemId> pressures;
    std::vector<ItemId> loads;
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const Kind& kind = model.kind(model.items[i].kind);
        if (is_pressure(kind))
            pressures.push_back(ItemId{i});
        if (kind.rests_on_pressure && model.items[i].carrier.known())
            loads.push_back(ItemId{i});
    }
    for (const ItemId pressure : pressures) {
        for (const ItemId load : loads) {
            if (presses_in(model, model.item(pressure), model.item(load).carrier))
                wait_for_load(model, pressure, load);
        }
        const ItemId vessel = model.item(pressure).carrier;
        if (!vessel.known())
            continue;
        for (const ItemId supply : model.item(vessel).fed_by)
            wait_for_supply(model, pressure, supply);
    }
}

} // namespace matchmark::model
