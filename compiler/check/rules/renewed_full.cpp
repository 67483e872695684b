// A part renewed while a fluid still stands in it.
#include "bench/contents.hpp"
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::ItemId;

model::StateId target_of(const Walk& walk, const bench::Act& act) {
    return walk.model.kind_of(act.item).verbs[act.verb].to;
}

// Where the fluid is let out: before the part, or a tie of it, first leaves its assembled state.
std::size_t let_out_at(const Walk& walk, std::size_t replaced, ItemId part) {
    for (std::size_t at = 0; at < replaced; ++at) {
        const auto& act = walk.events[at].act;
        if (!act || !bench::in_first_state(walk.bench, walk.state_at(at), act->item))
            continue;
        const auto& touches = walk.model.item(act->item).touches;
        const bool of_it =
            act->item == part || std::find(touches.begin(), touches.end(), part) != touches.end();
        if (of_it && walk.model.kind_of(act->item).set_of[target_of(walk, *act)] == 0)
            return at;
    }
    return replaced;
}

Diagnostic still_full(const Walk& walk, std::size_t at, ItemId part, ItemId fluid) {
    const model::Kind& kind = walk.model.kind_of(fluid);
    const std::size_t out = let_out_at(walk, at, part);
    const auto state = bench::state_of(walk.bench, walk.state_at(at), fluid, 0, 0);
    Diagnostic finding = finding_at(
        walk, at,
        fmt::format("{} is still `{}` when {} is renewed", model::with_kind(walk.model, fluid),
                    kind.states[state], model::with_kind(walk.model, part)));
    finding.label = "comes without it";
    finding.related.push_back({walk.model.item(fluid).span, "declared here"});
    finding.why = "it would go with the old part, and the new one would run without";
    const auto acts =
        bench::bring_to(walk.bench, walk.state_at(out), fluid,
                        model::states_of_set(kind, 0) & ~kind.present, wish_from(walk, out));
    if (acts)
        mend_with(walk, finding, out, *acts);
    if (finding.edits.empty())
        finding.help = fmt::format("let `{}` out before `{}` comes out",
                                   walk.model.item(fluid).name, walk.model.item(part).name);
    return finding;
}

void find_renewed_full(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const model::Action* action = walk.action(walk.events[at]);
        if (action == nullptr || action->sort != model::ActionSort::replace)
            continue;
        for (const model::Target& target : action->targets) {
            for (const ItemId fluid : bench::fluids_in(walk.bench, target.ref.item)) {
                if (bench::is_filled(walk.bench, walk.state_at(at), fluid))
                    findings.push_back(still_full(walk, at, target.ref.item, fluid));
            }
        }
    }
}

} // namespace

extern const Rule renewed_full;
const Rule renewed_full{"renewed-full", "goal", Severity::error,
                        "a part renewed while a fluid still stands in it", find_renewed_full};

} // namespace matchmark::check::rules
