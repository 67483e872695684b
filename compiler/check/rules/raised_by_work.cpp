// Work beside a danger that the guide itself has brought about: a car on its jack alone.
#include "check/to_safety.hpp"
#include "check/troubles.hpp"

#include "bench/dangerous.hpp"
#include "bench/missing.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::HazardUse;
using model::ItemId;

// What no part carries and nothing lays open: it stands there safe, until somebody raises it.
bool is_safe_at_first(const model::Kind& kind, const HazardUse& use) {
    return kind.role == model::Role::energy && use.on_reach &&
           model::contains(use.safe, kind.set_first.front());
}

const HazardUse* brought_about(const Walk& walk, std::size_t at, ItemId id) {
    for (const HazardUse& use : walk.model.kind_of(id).hazards) {
        if (is_safe_at_first(walk.model.kind_of(id), use) &&
            !bench::made_safe(walk.bench, walk.state_at(at), id, use.safe))
            return &use;
    }
    return nullptr;
}

bool is_work_beside(const Walk& walk, const Event& event, ItemId danger) {
    return event.act && event.act->item != danger &&
           !walk.model.kind_of(event.act->item).verbs[event.act->verb].from_outside;
}

bool told_there(const Walk& walk, std::size_t at) {
    return std::any_of(walk.troubles.begin(), walk.troubles.end(),
                       [&](const Trouble& trouble) { return trouble.event == at; });
}

// Further on, where that is safe: a car that is jacked is set on stands, and not let down again.
model::StateSet further_on(const Walk& walk, std::size_t at, ItemId id, model::StateSet safe) {
    const model::StateId found = bench::state_of(walk.bench, walk.state_at(at), id, 0, 0);
    model::StateSet beyond = safe;
    for (model::StateId state = 0; state <= found; ++state)
        beyond &= ~model::in_set(state);
    return beyond != 0 ? beyond : safe;
}

Diagnostic raised(const Walk& walk, std::size_t at, ItemId id, const HazardUse& use) {
    const model::Kind& kind = walk.model.kind_of(id);
    Diagnostic finding = finding_at(
        walk, at,
        fmt::format("{}: {} `{}`", walk.model.hazards[use.hazard.value].title, item_is(walk, id),
                    kind.states[bench::state_of(walk.bench, walk.state_at(at), id, 0, 0)]));
    finding.label = "hands are here";
    finding.why = fmt::format("it must be {} first", model::states_in_words(kind, use.safe));
    finding.related.push_back({walk.model.item(id).span, "the danger"});
    const model::StateSet wanted = further_on(walk, at, id, use.safe);
    if (const auto acts =
            bench::bring_to(walk.bench, walk.state_at(at), id, wanted, wish_from(walk, at)))
        mend_with(walk, finding, at, *acts, made_safe_later(walk, at, id, wanted));
    return finding;
}

void find_raised_by_work(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const ItemId id : walk.dangers.items) {
        if (walk.model.kind_of(id).role != model::Role::energy)
            continue;
        for (std::size_t at = 0; at < walk.events.size(); ++at) {
            if (!is_work_beside(walk, walk.events[at], id) || told_there(walk, at))
                continue;
            const HazardUse* use = brought_about(walk, at, id);
            if (use == nullptr)
                continue;
            findings.push_back(raised(walk, at, id, *use));
            break; // one omission is one finding
        }
    }
}

} // namespace

extern const Rule raised_by_work;
const Rule raised_by_work{"raised-by-work", "hazard", Severity::error,
                          "work beside what the guide itself has made dangerous, a car on its jack",
                          find_raised_by_work};

} // namespace matchmark::check::rules
