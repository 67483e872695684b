// A seal, a tape or a paste laid when what it lies between is already together.
#include "bench/lifted_after.hpp"
#include "check/mending.hpp"
#include "check/seals.hpp"
#include "check/troubles.hpp"
#include "model/run_out.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::ItemId;

bool lays(const Walk& walk, const bench::Act& act) {
    const model::Kind& kind = walk.model.kind_of(act.item);
    const model::Verb& verb = kind.verbs[act.verb];
    return kind.laid_first && model::contains(kind.binds, verb.to) &&
           (verb.from & kind.binds) == 0 && walk.model.item(act.item).touches.size() > 1 &&
           model::joints_across(walk.model, act.item).empty(); // the hose hangs there until then
}

// Was a part of it brought back before as if that had been mended? Then it is told there.
bool put_together_by_walk(const Walk& walk, ItemId seal) {
    const auto& parts = walk.model.item(seal).touches;
    const auto moves_part = [&](const std::vector<bench::Act>& acts) {
        return std::any_of(acts.begin(), acts.end(),
                           [&](const bench::Act& act) { return among(parts, act.item); });
    };
    return std::any_of(walk.troubles.begin(), walk.troubles.end(),
                       [&](const Trouble& trouble) { return moves_part(trouble.missing); }) ||
           std::any_of(walk.left_off.begin(), walk.left_off.end(),
                       [&](const LeftOff& left) { return moves_part(left.acts); });
}

// The last event before which the seal can be laid between what is still apart, and after which all
// can go on as it is written.
std::optional<std::size_t> in_time(const Walk& walk, std::size_t late) {
    const bench::Act& act = *walk.events[late].act;
    for (std::size_t at = late; at-- > 0;) {
        const bench::State& state = walk.state_at(at);
        if (!is_together(walk, state, act.item) && !bench::refusal(walk.bench, state, act) &&
            replay(walk, at, {act}, late))
            return at;
    }
    return std::nullopt;
}

// A seal that is picked out of its groove with nothing else taken off goes back so, too.
bool was_apart_since(const Walk& walk, std::size_t late) {
    const ItemId seal = walk.events[late].act->item;
    for (std::size_t at = late; at-- > 0;) {
        if (!is_together(walk, walk.state_at(at), seal))
            return true;
        if (walk.events[at].act && walk.events[at].act->item == seal)
            return false;
    }
    return false;
}

Diagnostic too_late(const Walk& walk, std::size_t at, std::size_t earlier) {
    const bench::Act& act = *walk.events[at].act;
    const auto& parts = walk.model.item(act.item).touches;
    Diagnostic finding = finding_at(walk, at,
                                    fmt::format("{} is laid when {} and {} are together already",
                                                model::with_kind(walk.model, act.item),
                                                model::quoted(walk.model, parts.front()),
                                                model::quoted(walk.model, parts.back())));
    finding.label = "too late here";
    finding.why = "it lies between the two";
    finding.related.push_back({walk.model.item(act.item).span, "declared here"});
    const model::Action& action = *walk.action(walk.events[at]);
    mend_with(walk, finding, earlier, {act}, {action.line});
    if (!finding.edits.empty())
        finding.edits.push_back(take_out(walk, action.line, {act}));
    finding.help = "move it up";
    return finding;
}

// The event that took the seal off, where what lies over it has not been off since; not where the
// work between the two could not be done over the seal.
std::optional<std::size_t> taken_from_under(const Walk& walk, std::size_t laid) {
    const ItemId seal = walk.events[laid].act->item;
    const ItemId over = bench::part_over(walk.bench, seal);
    for (std::size_t at = laid; over.known() && at-- > 0;) {
        const auto& act = walk.events[at].act;
        if (act && act->item == seal)
            return replay(walk, at + 1, {*walk.events[laid].act}, laid) ? std::optional(at)
                                                                        : std::nullopt;
    }
    return std::nullopt;
}

bool can_come_out(const Walk& walk, std::size_t at, const bench::Act& act, std::size_t until) {
    const auto then = replay(walk, at, {act}, until);
    return then && !bench::refusal(walk.bench, *then, *walk.events[until].act);
}

Diagnostic never_apart(const Walk& walk, std::size_t at, std::size_t off) {
    const ItemId seal = walk.events[at].act->item;
    const ItemId over = bench::part_over(walk.bench, seal);
    const auto& parts = walk.model.item(seal).touches;
    Diagnostic finding =
        finding_at(walk, at,
                   fmt::format("{} is laid, and {} and {} were never apart",
                               model::with_kind(walk.model, seal), model::quoted(walk.model, over),
                               model::quoted(walk.model, parts.back())));
    finding.label = "cannot be laid here";
    finding.why = "it lies between the two";
    finding.related.push_back({place_of(walk, off), "taken from between them here"});
    finding.help =
        fmt::format("take {} off before, and put it on after", model::quoted(walk.model, over));
    const model::Kind& kind = walk.model.kind_of(over);
    const bench::Wish no_wish = [](std::uint32_t) -> model::StateSet { return 0; };
    const auto out = bench::bring_to(walk.bench, walk.state_at(off + 1), over,
                                     model::states_of_set(kind, 0) & ~kind.present, no_wish);
    if (!out || out->size() != 1 || !can_come_out(walk, off + 1, out->front(), at))
        return finding;
    const auto back = bench::reversed(walk.model, out->front(), kind.set_first.front());
    const model::Action* laying = walk.action(walk.events[at]);
    const bool derived = laying != nullptr && laying->derived;
    if (!back)
        return finding;
    finding.edits = insert_before(walk, off, lines_for(walk, *out));
    if (!derived && !finding.edits.empty()) {
        for (Edit& edit : insert_before(walk, at + 1, lines_for(walk, {*back})))
            finding.edits.push_back(std::move(edit));
    }
    return finding;
}

// Where no place is earlier, the device says how it goes: a plug below the glue is joined first.
void find_laid_too_late(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size(); ++at) {
        const auto& act = walk.events[at].act;
        if (!act || !lays(walk, *act) || put_together_by_walk(walk, act->item) ||
            !is_together(walk, walk.state_at(at), act->item))
            continue;
        if (!was_apart_since(walk, at)) {
            if (const auto off = taken_from_under(walk, at))
                findings.push_back(never_apart(walk, at, *off));
            continue;
        }
        if (const auto earlier = in_time(walk, at))
            findings.push_back(too_late(walk, at, *earlier));
    }
}

} // namespace

extern const Rule laid_too_late;
const Rule laid_too_late{"laid-too-late", "seated", Severity::error,
                         "a seal, a tape or a paste laid when what it lies between is together",
                         find_laid_too_late};

} // namespace matchmark::check::rules
