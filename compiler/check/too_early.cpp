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

bool all_on(const std::vector<bench::Act>& acts, model::ItemId item) {
    return !acts.empty() && std::all_of(acts.begin(), acts.end(),
                                        [&](const bench::Act& act) { return act.item == item; });
}

// Where the walk, having made the item safe, found it missing again.
std::optional<TooEarly> missed_later(const Walk& walk, const Trouble& trouble, model::ItemId item) {
    for (const LeftOff& left : walk.left_off) {
        if (!left.closed_in && left.items.size() == 1 && left.items.front() == item &&
            !left.acts.empty())
            return TooEarly{{}, left.at, left.acts, &left, nullptr};
    }
    for (const Trouble& other : walk.troubles) {
        if (other.event > trouble.event && std::holds_alternative<NotReady>(other.objection) &&
            all_on(other.missing, item))
            return TooEarly{{}, other.mend_at, other.missing, nullptr, &other};
    }
    return std::nullopt;
}

// Can the event be moved with its line, a line of the guide's own for this item alone?
bool can_move(const Walk& walk, const Event& event) {
    const model::Action* action = walk.action(event);
    return action->targets.size() == 1 && !action->derived &&
           action->line.file == walk.guide().file;
}

} // namespace

std::optional<TooEarly> too_early(const Walk& walk, const Trouble& trouble) {
    const auto undone = undone_by(walk, trouble);
    std::optional<TooEarly> found;
    model::ItemId moved;
    for (std::size_t at = trouble.event; undone && at-- > 0;) {
        const Event& event = walk.events[at];
        if (walk.step(event).section != model::Section::put_back)
            return std::nullopt;
        if (!event.act ||
            (found ? event.act->item != moved : !brings_back(walk, event.act->item, undone->item)))
            continue;
        moved = event.act->item;
        if (!found)
            found = missed_later(walk, trouble, moved);
        if (!found || !can_move(walk, event) || on_for_a_test(walk, at, trouble.event, moved))
            return std::nullopt;
        found->lines.insert(found->lines.begin(), walk.action(event)->line);
        // One act for each line: locked off and shut down comes back in two.
        if (undone->stood_so(at))
            return found->lines.size() == found->acts.size() ? found : std::nullopt;
    }
    return std::nullopt;
}

void move_down(const Walk& walk, const TooEarly& early, const char* label, Diagnostic& finding) {
    finding.edits.clear();
    finding.related.push_back({early.lines.front(), label});
    mend_with(walk, finding, early.at, early.acts, early.lines);
    if (!finding.edits.empty()) {
        for (const Span line : early.lines)
            finding.edits.push_back(remove_line(walk.sources, line));
    }
    finding.help = early.lines.size() > 1 ? "move them down" : "move it down";
}

ToldAsTooEarly::ToldAsTooEarly(const Walk& walk) {
    for (const Trouble& trouble : walk.troubles) {
        if (auto early = too_early(walk, trouble))
            told_.push_back({&trouble, std::move(*early)});
    }
}

bool ToldAsTooEarly::covers(const LeftOff& left) const {
    return std::any_of(told_.begin(), told_.end(),
                       [&](const Told& told) { return told.early.left_off == &left; });
}

bool ToldAsTooEarly::covers(const Trouble& trouble) const {
    const auto own = std::find_if(told_.begin(), told_.end(),
                                  [&](const Told& told) { return told.trouble == &trouble; });
    return std::any_of(told_.begin(), told_.end(),
                       [&](const Told& told) { return told.early.not_ready == &trouble; }) ||
           (own != told_.end() && std::any_of(told_.begin(), own, [&](const Told& told) {
                return told.early.lines == own->early.lines;
            }));
}

} // namespace matchmark::check
