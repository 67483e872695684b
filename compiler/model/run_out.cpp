// Reads from the kinds of a joint and of a fluid what the device need not say of each.
#include "model/run_out.hpp"

#include "model/implied_need.hpp"

#include <algorithm>
#include <iterator>
#include <map>

namespace matchmark::model {

namespace {

// Of a part that holds several fluids, only the device's own line tells which stands at the joint.
bool says_what_runs_out(const Model& model, const Item& joint, const std::string& verb) {
    return std::any_of(joint.needs.begin(), joint.needs.end(), [&](const Need& need) {
        return need.of == NeedOf::its_line && need.verb == verb &&
               model.item(need.condition.item.item).role == Role::fluid;
    });
}

bool comes_out(const Kind& kind, const Verb& verb) {
    return kind.set_of[verb.to] == 0 && (verb.from & kind.present) != 0 &&
           !contains(kind.present, verb.to);
}

// The verbs that open the vessel: those that part a tie, or take a part out of it.
// What a supply would press on is joined as soon as nothing runs.
void add_need(Model& model, ItemId id, ItemId fluid, StateId emptied) {
    const Kind& kind = model.kind_of(id);
    const auto opens = kind.role == Role::part ? comes_out : lets_go;
    for (const Verb& verb : kind.verbs) {
        if (!opens(kind, verb) || says_what_runs_out(model, model.item(id), verb.name))
            continue;
        Need need = need_of(model, fluid, emptied, verb.name, NeedOf::vessel);
        need.alone = carries_matter(model.kind_of(fluid)) && !model.item(fluid).feeds.empty();
        model.items.edit(id.value).needs.push_back(std::move(need));
    }
}

using Emptied = std::vector<std::pair<ItemId, StateId>>;

// What the joint's own lines ask of a fluid before it is parted.
Emptied said_of(const Model& model, const Item& joint) {
    const Kind& kind = model.kind(joint.kind);
    Emptied found;
    for (const Need& need : joint.needs) {
        const ItemId fluid = need.condition.item.item;
        const Verb* verb = find_verb(kind, need.verb);
        if (model.item(fluid).role == Role::fluid && verb != nullptr && lets_go(kind, *verb))
            found.emplace_back(fluid, need.condition.state);
    }
    return found;
}

bool lets_out(const Model& model, ItemId tie) {
    return model.kind_of(tie).lets_out && !model.item(tie).lets_nothing_out;
}

bool is_drain_plug(const Model& model, ItemId id) {
    return model.item(id).role == Role::fastener && lets_out(model, id);
}

// Is the part a hose, by how it is joined? It carries nothing, and all its connectors let out: what
// stands at its other end comes through it.
bool lets_through(const Model& model, ItemId part) {
    const Item& item = model.item(part);
    return item.carried.empty() && std::all_of(item.ties.begin(), item.ties.end(), [&](ItemId tie) {
               return model.item(tie).role != Role::connector || model.kind_of(tie).lets_out;
           });
}

} // namespace

std::vector<ItemId> parts_behind(const Model& model, const Item& joint) {
    std::vector<ItemId> parts = joint.touches;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (!lets_through(model, parts[i]))
            continue;
        for (const ItemId tie : model.item(parts[i]).ties) {
            if (!lets_out(model, tie))
                continue;
            for (const ItemId part : model.item(tie).touches) {
                if (std::find(parts.begin(), parts.end(), part) == parts.end())
                    parts.push_back(part);
            }
        }
    }
    return parts;
}

namespace {

// What stands in these very parts, or presses in them: a machine carries its tank, and no joint of
// it lets that out.
Emptied run_out_of(const Model& model, const Item& joint) {
    Emptied found;
    const auto add = [&](ItemId id) {
        const Kind& kind = model.kind_of(id);
        if (const auto emptied = kind.runs_out ? emptied_state(kind) : std::nullopt)
            found.emplace_back(id, *emptied);
    };
    for (const ItemId part : parts_behind(model, joint)) {
        const Item& item = model.item(part);
        std::for_each(item.carried.begin(), item.carried.end(), add);
        std::for_each(item.fed_by.begin(), item.fed_by.end(), add);
        // A valve is under the pressure of the vessel that it is in.
        for (ItemId at = item.carrier; at.known(); at = model.item(at).carrier) {
            for (const ItemId id : model.item(at).carried) {
                if (model.item(id).role == Role::energy)
                    add(id);
            }
        }
    }
    return found;
}

// What presses in the parts between which the seal lies, and the fluid there under that pressure: a
// boiler is full up to the seal. Of a fluid alone nothing is said: the oil in a sump stands below
// the lid.
Emptied pressed_against(const Model& model, const Item& seal) {
    Emptied found;
    for (const ItemId part : seal.touches) {
        const auto& carried = model.item(part).carried;
        const auto presses = [&](ItemId id) {
            return model.item(id).role == Role::energy && model.kind_of(id).runs_out;
        };
        if (std::none_of(carried.begin(), carried.end(), presses))
            continue;
        for (const ItemId id : carried) {
            const Kind& kind = model.kind_of(id);
            if (const auto emptied = kind.runs_out ? emptied_state(kind) : std::nullopt)
                found.emplace_back(id, *emptied);
        }
    }
    return found;
}

// The screws that press a seal let go of what stands behind it; so does the seal itself.
void settle_seal(Model& model, ItemId seal) {
    Emptied behind = said_of(model, model.item(seal));
    if (behind.empty() && !model.item(seal).lets_nothing_out) {
        behind = pressed_against(model, model.item(seal));
        for (const auto& [pressure, emptied] : behind)
            add_need(model, seal, pressure, emptied);
    }
    for (const auto& [fluid, emptied] : behind) {
        for (const ItemId screw : fasteners_across(model, seal))
            add_need(model, screw, fluid, emptied);
    }
}

void settle_joint(Model& model, ItemId joint) {
    std::vector<ItemId> ties{joint};
    for (const ItemId grip : fasteners_across(model, joint)) {
        if (model.kind_of(joint).clamped)
            ties.push_back(grip);
    }
    Emptied emptied_first = said_of(model, model.item(joint));
    if (emptied_first.empty())
        emptied_first = run_out_of(model, model.item(joint));
    for (const auto& [fluid, emptied] : emptied_first) {
        for (const ItemId tie : ties)
            add_need(model, tie, fluid, emptied);
    }
}

// What presses in each part, by its number: most parts hold nothing that does.
std::map<std::uint32_t, Emptied> pressures(const Model& model) {
    std::map<std::uint32_t, Emptied> found;
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const Item& item = model.items[i];
        const Kind& kind = model.kind(item.kind);
        if (item.role != Role::energy || !item.carrier.known() || !kind.runs_out)
            continue;
        if (const auto emptied = emptied_state(kind))
            found[item.carrier.value].emplace_back(ItemId{i}, *emptied);
    }
    return found;
}

// A gauge and a drain plug close the vessel that they are in.
void settle_what_closes(Model& model) {
    const auto pressed = pressures(model);
    for (std::uint32_t i = 0; i < model.items.size() && !pressed.empty(); ++i) {
        const Item& item = model.items[i];
        const bool closes =
            item.role == Role::part ? !item.lets_nothing_out : is_drain_plug(model, ItemId{i});
        const auto vessel = pressed.find(item.carrier.value);
        if (!closes || !item.carrier.known() || vessel == pressed.end())
            continue;
        for (const auto& [pressure, emptied] : vessel->second)
            add_need(model, ItemId{i}, pressure, emptied);
    }
}

// The states in which a supply of what runs does not run.
StateSet shut_states(const Kind& kind) {
    return kind.runs_out ? states_of_set(kind, 0) & ~in_set(kind.set_first.front()) : StateSet{0};
}

// A supply of what runs fills what it feeds again as long as it is not shut.
void settle_filled(Model& model, ItemId fluid) {
    for (ItemId vessel = model.item(fluid).carrier; vessel.known();
         vessel = model.item(vessel).carrier) {
        for (const ItemId supply : model.item(vessel).fed_by) {
            const StateSet shut = shut_states(model.kind_of(supply));
            for (const Verb& verb : model.kind_of(fluid).verbs) {
                if (shut == 0 || !comes_out(model.kind_of(fluid), verb) ||
                    asks_itself(model.item(fluid), verb.name, supply))
                    continue;
                Need need = need_of_any(model, supply, shut, verb.name, NeedOf::supply);
                need.alone = true;
                model.items.edit(fluid.value).needs.push_back(std::move(need));
            }
        }
    }
}

} // namespace

std::optional<StateId> emptied_state(const Kind& fluid) {
    if (!contains(fluid.present, fluid.set_first.front()))
        return std::nullopt;
    for (std::size_t state = 0; state < fluid.states.size(); ++state) {
        if (fluid.set_of[state] == 0 && !contains(fluid.present, static_cast<StateId>(state)))
            return static_cast<StateId>(state);
    }
    return std::nullopt;
}

std::vector<ItemId> drain_plugs(const Model& model, const Item& item) {
    if (!item.carrier.known())
        return {};
    std::vector<ItemId> plugs;
    const auto& carried = model.item(item.carrier).carried;
    std::copy_if(carried.begin(), carried.end(), std::back_inserter(plugs),
                 [&](ItemId id) { return is_drain_plug(model, id); });
    return plugs;
}

namespace {

// The ties, among those of the parts that this one ties, that tie two of them too.
template <class Wanted>
std::vector<ItemId> ties_across(const Model& model, ItemId tie, Wanted wanted) {
    const auto& parts = model.item(tie).touches;
    const auto joins = [&](ItemId part) {
        return std::find(parts.begin(), parts.end(), part) != parts.end();
    };
    std::vector<ItemId> found;
    for (const ItemId part : parts) {
        for (const ItemId id : model.item(part).ties) {
            const Item& other = model.item(id);
            const bool known = std::find(found.begin(), found.end(), id) != found.end();
            if (id != tie && wanted(other) && !known &&
                std::count_if(other.touches.begin(), other.touches.end(), joins) > 1)
                found.push_back(id);
        }
    }
    return found;
}

} // namespace

std::vector<ItemId> fasteners_across(const Model& model, ItemId tie) {
    return ties_across(model, tie, [](const Item& other) { return other.role == Role::fastener; });
}

std::vector<ItemId> joints_across(const Model& model, ItemId tie) {
    return ties_across(model, tie, [&](const Item& other) {
        return other.role == Role::connector && model.kind(other.kind).lets_out;
    });
}

void settle_run_out(Model& model) {
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const Item& item = model.items[i];
        const Kind& kind = model.kind(item.kind);
        if (kind.laid_first)
            settle_seal(model, ItemId{i});
        if (item.role == Role::connector && kind.lets_out && !item.lets_nothing_out)
            settle_joint(model, ItemId{i});
        if (item.role == Role::fluid)
            settle_filled(model, ItemId{i});
    }
    settle_what_closes(model);
}

} // namespace matchmark::model
