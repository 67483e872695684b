// What waits for a supply to be cut: what it feeds, what it drives, what it would take back.
#include "bench/exposure.hpp"
#include "bench/isolation.hpp"
#include "bench/power.hpp"
#include "bench/recharge.hpp"
#include "model/driven.hpp"
#include "model/passing_on.hpp"
#include "plan/way_in/condition_nodes.hpp"

namespace matchmark::plan {

using model::Item;
using model::ItemId;
using model::Kind;
using model::Role;

namespace {

ItemId first_fed(const bench::Bench& bench, const Item& source) {
    const auto fed = std::find_if(source.feeds.begin(), source.feeds.end(),
                                  [&](ItemId part) { return bench.exists(part); });
    return fed == source.feeds.end() ? ItemId{} : *fed;
}

} // namespace

// The source is off, or a connector on its way is parted, other than the one that is worked on.
std::vector<NodeIndex> Conditions::dead(ItemId source, ItemId part, ItemId worked_on) {
    const ActReason live{ReasonSort::live, {}, source, part, 0, model_.item(source).span};
    std::vector<NodeIndex> ways = parted(source, part, worked_on, live);
    ways.insert(ways.begin(), left({source, {}, {}}, model_.kind_of(source).live, live));
    return ways;
}

// A connector on the way from the source to the part is parted, other than the one worked on.
std::vector<NodeIndex> Conditions::parted(ItemId source, ItemId part, ItemId worked_on,
                                          const ActReason& live) {
    const Item& from = model_.item(source);
    std::vector<NodeIndex> ways;
    for (const ItemId by : from.through) {
        if (by != worked_on && bench_.exists(by))
            ways.push_back(left({by, {}, {}}, model_.kind_of(by).binds, live));
    }
    for (const ItemId by : model::connectors_to(from, part)) {
        if (bench_.exists(by))
            ways.push_back(left({by, {}, {}}, model_.kind_of(by).binds, live));
    }
    return ways;
}

// The source is dead, and safe by each of its hazards if work on what it feeds is how it is met; or
// the part is `gone`.
void Conditions::add_power(const Task& task, ItemId source, ItemId part,
                           const std::vector<NodeIndex>& gone, std::vector<NodeIndex>& all) {
    const ItemId id = graph_.units[task.unit].item;
    const auto wait_for = [&](std::vector<NodeIndex> ways) {
        ways.insert(ways.end(), gone.begin(), gone.end());
        all.push_back(add(NodeSort::any, std::move(ways)));
    };
    wait_for(dead(source, part, id));
    const Item& from = model_.item(source);
    if (!bench::is_met_by_what_it_feeds(from) || model_.kind_of(id).verbs[task.verb].from_outside)
        return;
    for (const model::HazardUse& use : model_.kind(from.kind).hazards) {
        if (bench::is_needed_for_safety(model_, id, source, use))
            continue;
        const ActReason danger{ReasonSort::hazard, {}, source, id, 0, use.span};
        std::vector<NodeIndex> ways = parted(source, part, id, danger);
        ways.insert(ways.begin(), in_states({source, {}, {}}, use.safe, danger));
        wait_for(std::move(ways));
    }
}

void Conditions::add_live(const Task& task, const std::vector<ItemId>& moved,
                          std::vector<NodeIndex>& all) {
    const ItemId id = graph_.units[task.unit].item;
    const Item& item = model_.item(id);
    const bool plug = item.role == Role::connector && graph_.units[task.unit].set == 0;
    if (model_.kind(item.kind).verbs[task.verb].safe_when_live || item.safe_when_live)
        return;
    const bool out = leaves(task);
    std::vector<ItemId> touched = plug ? item.touches : std::vector<ItemId>{};
    if (out)
        touched = moved;
    else if (item.role == Role::part && is_way_to_safety(task))
        touched = {id};
    for (const ItemId source : sources_) {
        const Item& from = model_.item(source);
        const bool opens = plug ? model_.kind(item.kind).lets_out : out;
        if (source == id ||
            (!opens && model::carries_matter(model_.kind(from.kind)) && !among(from.through, id)))
            continue;
        if (among(from.through, id)) {
            const ItemId fed = first_fed(bench_, from);
            if (plug && fed.known() && model::cut_from_outside(model_.kind(from.kind)))
                all.push_back(add(NodeSort::any, dead(source, fed, id)));
            continue;
        }
        const bool at_the_source = model::cut_from_outside(model_.kind(from.kind));
        const auto isolates = [&](ItemId part) {
            return !at_the_source && model::is_on_its_line(from, id, part);
        };
        const auto beside = [&](ItemId part) {
            return off(part, {ReasonSort::aside, {}, part, id, 0, from.span});
        };
        for (const ItemId part : touched) {
            if (among(from.feeds, part) && !isolates(part)) {
                // What is off already is no longer touched.
                std::vector<NodeIndex> gone;
                for (ItemId at = part; !plug && at.known() && at != id;
                     at = model_.item(at).carrier)
                    gone.push_back(beside(at));
                add_power(task, source, part, gone, all);
            }
            // What a touched part is in is touched too, until it lies beside it.
            std::vector<NodeIndex> apart;
            for (ItemId at = part; model_.item(at).carrier.known(); at = model_.item(at).carrier) {
                const ItemId carrier = model_.item(at).carrier;
                if (!(out && at == id))
                    apart.push_back(beside(at));
                if (!among(from.feeds, carrier) || isolates(carrier) || among(moved, carrier))
                    continue;
                if (!out) {
                    add_power(task, source, carrier, apart, all);
                    continue;
                }
                std::vector<NodeIndex> ways = dead(source, carrier, id);
                ways.insert(ways.end(), apart.begin(), apart.end());
                all.push_back(add(NodeSort::any, std::move(ways)));
            }
        }
    }
}

// What is driven is not loosened at its place while a supply that can be cut from outside is on.
void Conditions::add_driven(const Task& task, std::vector<NodeIndex>& all) {
    const ItemId id = graph_.units[task.unit].item;
    const Item& item = model_.item(id);
    if (graph_.units[task.unit].set != 0 || item.safe_when_live ||
        model_.kind(item.kind).verbs[task.verb].safe_when_live)
        return;
    for (const ItemId part : model::driven_held_by(model_, item)) {
        if (!bench_.exists(part))
            continue;
        for (const ItemId source : model_.item(part).fed_by) {
            if (!bench_.exists(source) || !model::cut_from_outside(model_.kind_of(source)))
                continue;
            std::vector<NodeIndex> gone;
            const Span because = model_.item(source).span;
            for (ItemId at = part; at.known(); at = model_.item(at).carrier)
                gone.push_back(off(at, {ReasonSort::aside, {}, at, id, 0, because}));
            add_power(task, source, part, gone, all);
        }
    }
}

// What a supply would take back waits for it, along every way by which it may come.
void Conditions::add_supplies_off(const Task& task, std::vector<NodeIndex>& all) {
    const ItemId id = graph_.units[task.unit].item;
    const Kind& kind = model_.kind_of(id);
    const model::Verb& verb = kind.verbs[task.verb];
    if (!bench::is_taken_back(kind, verb) || verb.safe_when_live || model_.item(id).safe_when_live)
        return;
    for (const ItemId source : bench::supplies_of(bench_, id)) {
        all.push_back(
            add(NodeSort::any, dead(source, first_fed(bench_, model_.item(source)), ItemId{})));
    }
}

} // namespace matchmark::plan
