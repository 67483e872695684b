// Reads from the functions of a device what its sources drive.
#include "model/driven.hpp"

#include "model/sources.hpp"

#include <algorithm>

namespace matchmark::model {

namespace {

// Does the energy that the part holds, or that drives it, come back while its function runs: a
// pressure that a pump builds up? Not one that heat makes, and that cools: a boiler stands still.
bool is_kept_moving(const Model& model, const Item& item) {
    const auto moves = [&](ItemId id) {
        const auto& verbs = model.kind_of(id).verbs;
        return model.item(id).role == Role::energy && model.kind_of(id).moves &&
               !(model.kind_of(id).runs_out &&
                 std::any_of(verbs.begin(), verbs.end(),
                             [](const Verb& verb) { return verb.waits.has_value(); }));
    };
    return std::any_of(item.fed_by.begin(), item.fed_by.end(), moves) ||
           std::any_of(item.carried.begin(), item.carried.end(), moves);
}

bool feeds_some_of(const Item& source, const std::vector<ItemId>& path) {
    return std::any_of(source.feeds.begin(), source.feeds.end(), [&](ItemId fed) {
        return std::find(path.begin(), path.end(), fed) != path.end();
    });
}

std::vector<ItemId> driven_on(const Model& model, const Function& function) {
    std::vector<ItemId> driven;
    for (const ItemId id : function.through) {
        const Item& item = model.item(id);
        if (!function.is_rating && item.role == Role::part && is_driven(model, item))
            driven.push_back(id);
    }
    return driven;
}

// Of what it feeds, all but what it drives.
std::vector<ItemId> fed_undriven(const Item& source) {
    return {source.feeds.begin(), source.feeds.end() - std::ssize(source.feeding->drives)};
}

// What lies on the path of a function, and what carries something of it that the source feeds: the
// body, with its motor.
struct Sides {
    std::vector<bool> on_path;     // of each item
    std::vector<bool> carries_fed; // likewise
};

Sides sides_of(const Model& model, const Item& source, const std::vector<ItemId>& path) {
    Sides sides{std::vector<bool>(model.items.size()), std::vector<bool>(model.items.size())};
    for (const ItemId id : path)
        sides.on_path[id.value] = true;
    for (const ItemId fed : fed_undriven(source)) {
        if (!sides.on_path[fed.value])
            continue;
        for (ItemId at = fed; at.known() && !sides.carries_fed[at.value];
             at = model.item(at).carrier)
            sides.carries_fed[at.value] = true;
    }
    return sides;
}

// The connector of the path at which the part, with what it goes with, is coupled to what drives
// it; nothing when there are several, for which of them drives nobody says.
std::vector<ItemId> coupling_of(const Model& model, ItemId part, const Sides& sides) {
    ItemId coupling;
    for (ItemId at = part; at.known() && !sides.carries_fed[at.value];
         at = model.item(at).carrier) {
        for (const ItemId tie : model.item(at).ties) {
            if (model.item(tie).role != Role::connector || !sides.on_path[tie.value] ||
                tie == coupling)
                continue;
            if (coupling.known())
                return {};
            coupling = tie;
        }
    }
    return coupling.known() ? std::vector<ItemId>{coupling} : std::vector<ItemId>{};
}

// Another function drives it too: it lies behind what is the coupling of both alone.
void also_coupled_by(Item& source, ItemId moved, const std::vector<ItemId>& couplings) {
    for (FedThrough& fed : source.feeding.edit().feeds_through.edit()) {
        if (fed.part != moved)
            continue;
        std::erase_if(fed.connectors,
                      [&](ItemId connector) { return !among(couplings, connector); });
    }
}

// Of what the function drives, what the source does not feed yet.
bool feed_more(Model& model, ItemId source, const Function& function,
               const std::vector<ItemId>& driven) {
    bool more = false;
    const Sides sides = sides_of(model, model.item(source), function.through);
    for (const ItemId moved : driven) {
        const bool driven_too = among(model.item(source).feeding->drives, moved);
        if (moved == source || (among(model.item(source).feeds, moved) && !driven_too))
            continue;
        const auto couplings = coupling_of(model, moved, sides);
        Item& edited = model.items.edit(source.value);
        if (driven_too) {
            also_coupled_by(edited, moved, couplings);
            continue;
        }
        edited.feeds.push_back(moved);
        edited.feeding.edit().drives.push_back(moved);
        if (!couplings.empty())
            edited.feeding.edit().feeds_through.push_back({moved, couplings});
        more = true;
    }
    return more;
}

std::vector<ItemId> guards_of(const Model& model, const Item& part) {
    std::vector<ItemId> guards;
    for (const ReachClause& clause : part.reach) {
        for (const auto& way : clause.ways) {
            for (const ItemRef& ref : way) {
                if (model.kind_of(ref.item).guards && !among(guards, ref.item))
                    guards.push_back(ref.item);
            }
        }
    }
    return guards;
}

} // namespace

bool is_driven(const Model& model, const Item& part) {
    // A switch behind the guard stands still.
    const Kind& kind = model.kind(part.kind);
    return kind.moves || is_kept_moving(model, part) ||
           (!kind.passes_on && guard_of(model, part).known());
}

ItemId guard_of(const Model& model, const Item& part) {
    const auto guards = guards_of(model, part);
    return guards.empty() ? ItemId{} : guards.front();
}

std::vector<ItemId> driven_held_by(const Model& model, const Item& tie) {
    std::vector<ItemId> driven;
    if (tie.role != Role::fastener && tie.role != Role::bond)
        return driven;
    for (const ItemId part : tie.touches) {
        const bool is_base = tie.touches.size() > 1 && part == tie.touches.back();
        if (is_base || model.item(part).role != Role::part)
            continue;
        if (is_driven(model, model.item(part)))
            driven.push_back(part);
        // A guard that nothing holds is none.
        const auto& guarded = model.item(part).rare->guards;
        driven.insert(driven.end(), guarded.begin(), guarded.end());
    }
    return driven;
}

namespace {

void settle_guards(Model& model) {
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if (model.items[i].role != Role::part)
            continue;
        for (const ItemId guard : guards_of(model, model.items[i]))
            model.items.edit(guard.value).rare.edit().guards.edit().push_back(ItemId{i});
    }
}

} // namespace

void settle_driven(Model& model) {
    settle_guards(model);
    bool found = false;
    // The belt of one function turns the blade of the next, in whatever order they are declared.
    for (bool more = true; more;) {
        more = false;
        for (const Function& function : model.functions) {
            const std::vector<ItemId> driven = driven_on(model, function);
            if (driven.empty())
                continue; // of most functions, which would be asked of each source
            for (const ItemId source : model.sources) {
                if (feeds_some_of(model.item(source), function.through))
                    more = feed_more(model, source, function, driven) || more;
            }
        }
        found = found || more;
    }
    if (found)
        settle_sources(model);
}

} // namespace matchmark::model
