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

// By a cover, with the screws that hold it.
bool is_covered(const Trouble& trouble) {
    const auto* refused = std::get_if<bench::Refusal>(&trouble.objection);
    const auto* out_of_reach =
        refused == nullptr ? nullptr : std::get_if<bench::OutOfReach>(refused);
    return out_of_reach != nullptr && !out_of_reach->terminal.known();
}

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
          std::holds_alternative<bench::UnmetNeed>(*refused) || is_covered(trouble)))
        return std::nullopt;
    const bench::Act last = trouble.missing.back();
    const bool alone = std::all_of(trouble.missing.begin(), trouble.missing.end(),
                                   [&](const bench::Act& act) { return act.item == last.item; });
    if (!alone && !is_covered(trouble))
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
        if ((!left.closed_in || is_covered(trouble)) && among(left.items, item) &&
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

// What was acted on last, in the way back, so that the item is dangerous or in the way again.
std::optional<model::ItemId> brought_back_by(const Walk& walk, const Trouble& trouble,
                                             model::ItemId item) {
    for (std::size_t at = trouble.event; at-- > 0;) {
        const Event& event = walk.events[at];
        if (walk.step(event).section != model::Section::put_back)
            return std::nullopt;
        if (event.act && brings_back(walk, event.act->item, item))
            return event.act->item;
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
    const auto brought = undone ? brought_back_by(walk, trouble, undone->item) : std::nullopt;
    auto found = brought ? missed_later(walk, trouble, *brought) : std::nullopt;
    if (!found)
        return std::nullopt;
    // A supply, and the ram that was raised by it, go down together.
    const auto group =
        found->left_off != nullptr ? found->left_off->items : std::vector<model::ItemId>{*brought};
    for (std::size_t at = trouble.event; at-- > 0;) {
        const Event& event = walk.events[at];
        if (walk.step(event).section != model::Section::put_back)
            return std::nullopt;
        if (!event.act || !among(group, event.act->item))
            continue;
        if (!can_move(walk, event) || on_for_a_test(walk, at, trouble.event, event.act->item))
            return std::nullopt;
        found->lines.insert(found->lines.begin(), walk.action(event)->line);
        // One act for each line: locked off and shut down comes back in two.
        const bool all = found->lines.size() == found->acts.size();
        if (undone->stood_so(at) && (all || group.size() == 1))
            return all ? found : std::nullopt;
    }
    return std::nullopt;
}

namespace {

// An event of the step in which these lines are all that is done, if what they wait for begins with
// a step: then it moves as a whole, title and all.
std::optional<std::size_t> whole_step(const Walk& walk, const TooEarly& early) {
    const bool between = early.at >= walk.events.size() || early.at == 0 ||
                         walk.events[early.at].step != walk.events[early.at - 1].step;
    if (!between || walk.guide().derives_put_back)
        return std::nullopt;
    for (std::size_t at = 0; at < early.at; ++at) {
        const model::Action* action = walk.action(walk.events[at]);
        if (action == nullptr || action->line != early.lines.front())
            continue;
        const auto& actions = walk.step(walk.events[at]).actions;
        const bool all =
            std::equal(actions.begin(), actions.end(), early.lines.begin(), early.lines.end(),
                       [](const model::Action& one, Span line) { return one.line == line; });
        return all ? std::optional(at) : std::nullopt;
    }
    return std::nullopt;
}

} // namespace

void move_down(const Walk& walk, const TooEarly& early, const char* label, Diagnostic& finding) {
    finding.edits.clear();
    finding.related.push_back({early.lines.front(), label});
    if (const auto event = whole_step(walk, early)) {
        finding.edits = move_step(walk, *event, early.at);
        finding.help = "move the step down";
        return;
    }
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
