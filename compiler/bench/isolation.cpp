// Asks of the sources behind a connector whether they are cut elsewhere, or by it.
#include "bench/isolation.hpp"

#include "model/passing_on.hpp"

#include <algorithm>

namespace matchmark::bench {

using model::contains;
using model::Item;
using model::Kind;

namespace {

bool in_live_state(const Bench& bench, const State& state, ItemId source) {
    const Kind& kind = bench.model->kind_of(source);
    for (std::uint16_t member = 0; member < bench.model->item(source).count; ++member) {
        for (unsigned set = 0; set < kind.set_count(); ++set) {
            if (contains(kind.live, state_of(bench, state, source, member, set)))
                return true;
        }
    }
    return false;
}

} // namespace

std::optional<StillLive> live_through(const Bench& bench, const State& state, ItemId connector) {
    const model::Model& model = *bench.model;
    for (const ItemId id : model.item(connector).carries_from) {
        const Item& source = model.item(id);
        const auto& through = source.through;
        const bool feeds_through =
            std::find(through.begin(), through.end(), connector) != through.end();
        if (!feeds_through || !bench.exists(id) ||
            !model::cut_from_outside(model.kind(source.kind)) || !in_live_state(bench, state, id))
            continue;
        const bool joined = std::all_of(through.begin(), through.end(), [&](ItemId other) {
            return other == connector || !bench.exists(other) || binds(bench, state, other);
        });
        const auto fed = std::find_if(source.feeds.begin(), source.feeds.end(),
                                      [&](ItemId part) { return bench.exists(part); });
        if (joined && fed != source.feeds.end())
            return StillLive{id, *fed};
    }
    return std::nullopt;
}

ItemId inner_source(const Bench& bench, ItemId connector, ItemId item) {
    const model::Model& model = *bench.model;
    for (const ItemId id : model.item(connector).carries_from) {
        const Item& source = model.item(id);
        if (!bench.exists(id) || model::cut_from_outside(model.kind(source.kind)))
            continue;
        const bool on_all = among(source.through, connector);
        for (ItemId at = item; at.known(); at = model.item(at).carrier) {
            if (among(source.feeds, at) && (on_all || model::is_on_its_line(source, connector, at)))
                return id;
        }
    }
    return {};
}

bool safe_under_power(const Kind& kind, model::StateSet states) {
    return std::any_of(kind.verbs.begin(), kind.verbs.end(), [&](const model::Verb& verb) {
        return verb.safe_when_live && contains(states, verb.to);
    });
}

} // namespace matchmark::bench
