// A lead parted of a supply that is cut off, and that nobody has proved dead.
#include "check/to_safety.hpp"
#include "check/troubles.hpp"

#include "bench/dangerous.hpp"
#include "bench/missing.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::HazardUse;
using model::Item;
using model::ItemId;

// Hands on bare conductors: a connector parted, and not from outside, nor one made for it.
bool bares_leads(const Walk& walk, const Event& event) {
    if (!event.act)
        return false;
    const Item& item = walk.model.item(event.act->item);
    const model::Kind& kind = walk.model.kind(item.kind);
    const model::Verb& verb = kind.verbs[event.act->verb];
    return item.role == model::Role::connector && !item.safe_when_live && !verb.safe_when_live &&
           !verb.from_outside && !model::contains(kind.binds, verb.to) &&
           (verb.from & kind.binds) != 0;
}

bool feeds_an_end(const Walk& walk, const Item& source, const Item& connector) {
    return std::any_of(connector.touches.begin(), connector.touches.end(), [&](ItemId part) {
        for (ItemId at = part; at.known(); at = walk.model.item(at).carrier) {
            if (among(source.feeds, at))
                return true;
        }
        return false;
    });
}

// The hazard of a supply that is off, is not proved off, and is cut by no plug that anyone can see
// apart.
const HazardUse* unproved(const Walk& walk, const bench::State& state, ItemId id,
                          const Event& event) {
    const Item& source = walk.model.item(id);
    const auto& plugs = source.through;
    if (bench::is_live(walk.bench, state, id) || among(plugs, event.act->item) ||
        !std::all_of(plugs.begin(), plugs.end(),
                     [&](ItemId plug) { return bench::binds(walk.bench, state, plug); }) ||
        !feeds_an_end(walk, source, walk.model.item(event.act->item)))
        return nullptr;
    for (const HazardUse& use : walk.model.kind(source.kind).hazards) {
        if (!bench::made_safe(walk.bench, state, id, use.safe))
            return &use;
    }
    return nullptr;
}

// Few, if any: of a device of thousands of cells no lead asks them all.
std::vector<ItemId> supplies_to_prove(const Walk& walk) {
    std::vector<ItemId> supplies = walk.dangers.items;
    std::erase_if(supplies, [&](ItemId id) {
        const Item& item = walk.model.item(id);
        return item.role != model::Role::energy || item.carrier.known() || item.feeds.empty();
    });
    return supplies;
}

// What the walk met there already, it tells.
bool told_there(const Walk& walk, std::size_t at) {
    return std::any_of(walk.troubles.begin(), walk.troubles.end(),
                       [&](const Trouble& trouble) { return trouble.event == at; });
}

Diagnostic not_proved_at(const Walk& walk, std::size_t at, ItemId source, const HazardUse& use) {
    const model::Kind& kind = walk.model.kind_of(source);
    Diagnostic finding =
        finding_at(walk, at,
                   fmt::format("{}: {} not made safe", walk.model.hazards[use.hazard.value].title,
                               item_is(walk, source)));
    finding.label = "its leads are parted here";
    finding.why = fmt::format("it must be {} before this: the wrong switch may be off",
                              model::states_in_words(kind, use.safe));
    finding.related.push_back({walk.model.item(source).span, "dangerous until then"});
    if (const auto acts =
            bench::bring_to(walk.bench, walk.state_at(at), source, use.safe, wish_from(walk, at)))
        mend_with(walk, finding, at, *acts, made_safe_later(walk, at, source, use.safe));
    return finding;
}

void find_not_proved(const Walk& walk, std::vector<Diagnostic>& findings) {
    std::vector<ItemId> told; // one omission is one finding
    const std::vector<ItemId> supplies = supplies_to_prove(walk);
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        if (supplies.empty() || !bares_leads(walk, walk.events[at]) || told_there(walk, at))
            continue;
        for (const ItemId source : supplies) {
            const HazardUse* use = unproved(walk, walk.state_at(at), source, walk.events[at]);
            if (use == nullptr || among(told, source))
                continue;
            told.push_back(source);
            findings.push_back(not_proved_at(walk, at, source, *use));
        }
    }
}

} // namespace

extern const Rule not_proved;
const Rule not_proved{"not-proved", "hazard", Severity::error,
                      "a lead parted of a supply that is off, and not proved dead",
                      find_not_proved};

} // namespace matchmark::check::rules
