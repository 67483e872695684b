// The walk undoes what stands against an act, and finds the place for the way back anew: both are
// one line that stands too early.
#include "check/too_early.hpp"

#include "bench/dangerous.hpp"
#include "bench/recharge.hpp"
#include "check/mending.hpp"
#include "check/trials.hpp"

#include <algorithm>
#include <functional>

namespace matchmark::check {

namespace {

// What was away, and has to be so again for the act.
struct Undone {
    model::ItemId item;
    std::function<bool(std::size_t event)> stood_so;
};

std::optional<Undone> undone_by(const Walk& walk, const Trouble& trouble) {
    if (const auto* met = std::get_if<bench::Exposure>(&trouble.objection)) {
        const model::StateSet safe = walk.model.kind_of(met->item).hazards[met->use].safe;
        return Undone{met->item, [&walk, item = met->item, safe](std::size_t at) {
                          return bench::made_safe(walk.bench, walk.state_at(at), item, safe);
                      }};
    }
    const auto* refused = std::get_if<bench::Refusal>(&trouble.objection);
    if (refused == nullptr || trouble.missing.empty() ||
        !(std::holds_alternative<bench::StillLive>(*refused) ||
          std::holds_alternative<bench::UnmetNeed>(*refused)))
        return std::nullopt;
    const bench::Act last = trouble.missing.back();
    const bool alone = std::all_of(trouble.missing.begin(), trouble.missing.end(),
                                   [&](const bench::Act& act) { return act.item == last.item; });
    if (!alone)
        return std::nullopt;
    const model::Kind& kind = walk.model.kind_of(last.item);
    return Undone{last.item, [&walk, &kind, last](std::size_t at) {
                      const model::StateId to = kind.verbs[last.verb].to;
                      return bench::state_of(walk.bench, walk.state_at(at), last.item, 0,
                                             kind.set_of[to]) == to;
                  }};
}

// By an act on the source itself, or on a supply that charges or drives the item again.
bool brings_back(const Walk& walk, model::ItemId acted_on, model::ItemId item) {
    if (acted_on == item)
        return true;
    const auto charged = bench::charged_by(walk.bench, acted_on);
    return std::find(charged.begin(), charged.end(), item) != charged.end();
}

// Is it switched on for a test that stands between, and that cannot be done later? Then it is not
// too early; it is left on.
bool on_for_a_test(const Walk& walk, std::size_t on, std::size_t until, model::ItemId item) {
    for (std::size_t at = on + 1; at < until; ++at) {
        if (walk.events[at].action)
            continue;
        const auto& when = walk.step(walk.events[at]).when;
        const bool said =
            std::any_of(when.begin(), when.end(), [&](const model::Condition& condition) {
                return condition.item.item == item;
            });
        if ((said || done_under(walk, at, item)) && !better_point(walk, at))
            return true;
    }
    return false;
}

const LeftOff* left_off(const Walk& walk, model::ItemId item) {
    const auto found =
        std::find_if(walk.left_off.begin(), walk.left_off.end(), [&](const LeftOff& left) {
            return !left.closed_in && left.items.size() == 1 && left.items.front() == item &&
                   !left.acts.empty();
        });
    return found == walk.left_off.end() ? nullptr : &*found;
}

} // namespace

std::optional<TooEarly> too_early(const Walk& walk, const Trouble& trouble) {
    const auto undone = undone_by(walk, trouble);
    if (!undone)
        return std::nullopt;
    for (std::size_t at = trouble.event; at-- > 0;) {
        const Event& event = walk.events[at];
        const model::Action* action = walk.action(event);
        if (walk.step(event).section != model::Section::put_back)
            return std::nullopt;
        if (!event.act || !brings_back(walk, event.act->item, undone->item))
            continue;
        const LeftOff* later = left_off(walk, event.act->item);
        if (later == nullptr || !undone->stood_so(at) || action->targets.size() != 1 ||
            action->derived || action->line.file != walk.guide().file ||
            on_for_a_test(walk, at, trouble.event, event.act->item))
            return std::nullopt;
        return TooEarly{action->line, later};
    }
    return std::nullopt;
}

void move_down(const Walk& walk, const TooEarly& early, const char* label, Diagnostic& finding) {
    finding.edits.clear();
    finding.related.push_back({early.line, label});
    mend_with(walk, finding, early.later->at, early.later->acts, {early.line});
    if (!finding.edits.empty())
        finding.edits.push_back(remove_line(walk.sources, early.line));
    finding.help = "move it down";
}

bool told_as_too_early(const Walk& walk, const LeftOff& left) {
    return std::any_of(walk.troubles.begin(), walk.troubles.end(), [&](const Trouble& trouble) {
        const auto early = too_early(walk, trouble);
        return early && early->later == &left;
    });
}

} // namespace matchmark::check
