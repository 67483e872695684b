// What the rules, and the walk itself, ask of what was done.
#include "check/walk.hpp"

#include <algorithm>

namespace matchmark::check {

using bench::Act;
using model::StateSet;
using model::Step;

bench::Wish wish_from(const Walk& walk, std::size_t from) {
    return [&walk, from](std::uint32_t slot) -> StateSet {
        for (std::size_t i = from; i < walk.events.size(); ++i) {
            if (!walk.events[i].act)
                continue;
            const Act& act = *walk.events[i].act;
            const model::Item& item = walk.model.item(act.item);
            const model::Kind& kind = walk.model.kind(item.kind);
            const model::Verb& verb = kind.verbs[act.verb];
            const auto sets = static_cast<std::uint32_t>(kind.set_count());
            if (slot < item.first_slot || slot >= item.first_slot + item.count * sets)
                continue;
            if ((slot - item.first_slot) % sets != kind.set_of[verb.to])
                continue;
            return verb.from;
        }
        return 0;
    };
}

bool moved_by_walk(const Walk& walk, model::ItemId item) {
    if (!walk.guide().derives_put_back)
        return false;
    return std::any_of(walk.troubles.begin(), walk.troubles.end(), [&](const Trouble& trouble) {
        return walk.step(walk.events[trouble.event]).section != model::Section::put_back &&
               std::any_of(trouble.missing.begin(), trouble.missing.end(),
                           [&](const Act& act) { return act.item == item; });
    });
}

bool displaced(const Walk& walk, const Step& test) {
    return std::any_of(test.when.begin(), test.when.end(), [&](const model::Condition& condition) {
        return moved_by_walk(walk, condition.item.item);
    });
}

std::optional<std::size_t> fitted_before(const Walk& walk, std::size_t event, model::ItemId item) {
    for (std::size_t at = event; at-- > 0;) {
        if (walk.events[at].act && !bench::present(walk.bench, walk.state_at(at), item))
            return at;
    }
    return std::nullopt;
}

bool undoes_what_goes_on(const Walk& walk, std::size_t event, const std::vector<Act>& acts) {
    if (acts.empty())
        return false;
    const Act& last = acts.back();
    const model::Kind& kind = walk.model.kind_of(last.item);
    const auto next =
        std::find_if(walk.events.begin() + static_cast<std::ptrdiff_t>(event), walk.events.end(),
                     [&](const Event& later) { return later.act && later.act->item == last.item; });
    return next != walk.events.end() &&
           !model::contains(kind.verbs[next->act->verb].from, kind.verbs[last.verb].to);
}

bool takes_apart(const Walk& walk, const std::vector<Act>& acts) {
    return std::any_of(acts.begin(), acts.end(), [&](const Act& act) {
        const model::Kind& kind = walk.model.kind_of(act.item);
        const model::Verb& verb = kind.verbs[act.verb];
        const model::StateId first = kind.set_first[kind.set_of[verb.to]];
        return model::contains(verb.from, first) && verb.to != first;
    });
}

std::optional<std::size_t> last_left(const Walk& walk, model::ItemId item, std::size_t before) {
    for (std::size_t i = std::min(before, walk.events.size()); i-- > 0;) {
        const auto& act = walk.events[i].act;
        if (!act || act->item != item)
            continue;
        const model::Kind& kind = walk.model.kind_of(item);
        const model::Verb& verb = kind.verbs[act->verb];
        if (verb.to != kind.set_first[kind.set_of[verb.to]])
            return i;
    }
    return std::nullopt;
}

} // namespace matchmark::check
