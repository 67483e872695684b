// A supply switched on while what it charges is still joined: the short that kept it dead.
#include "check/supplies.hpp"
#include "check/troubles.hpp"

#include "bench/power.hpp"
#include "bench/recharge.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

using model::ItemId;

// What the source comes to, and stands in a state of safety that only a hand undoes.
struct Joined {
    ItemId item;
    model::StateId state = 0;
    model::StateSet free = 0; // the states of the set in which it may be switched on
};

std::optional<Joined> joined(const Walk& walk, const bench::State& state, ItemId item) {
    const model::Kind& kind = walk.model.kind_of(item);
    for (unsigned set = 0; set < kind.set_count(); ++set) {
        const model::StateSet back = bench::taken_back(kind, set);
        const model::StateSet free = back | model::in_set(kind.set_first[set]);
        for (std::uint16_t m = 0; back != 0 && m < walk.model.item(item).count; ++m) {
            const auto stands = bench::state_of(walk.bench, state, item, m, set);
            if (!model::contains(free, stands))
                return Joined{item, stands, free};
        }
    }
    return std::nullopt;
}

std::optional<Joined> come_to(const Walk& walk, const bench::State& state, ItemId source) {
    const auto fed = bench::fed_by_all(walk.bench, {source});
    for (const ItemId item : bench::under_power_with(walk.bench, &state, fed).items) {
        const auto found =
            bench::holds_a_charge(walk.bench, item) ? joined(walk, state, item) : std::nullopt;
        if (found)
            return found;
    }
    return std::nullopt;
}

// A line further down does it, too late: that one is moved.
void moved_from_below(const Walk& walk, std::size_t on, const std::vector<bench::Act>& acts,
                      Diagnostic& finding) {
    for (std::size_t at = on + 1; at < walk.events.size() && !finding.edits.empty(); ++at) {
        const auto& later = walk.events[at].act;
        const model::Action* action = walk.action(walk.events[at]);
        if (!later || later->item != acts.back().item || action->derived)
            continue;
        if (later->verb == acts.back().verb) {
            finding.related.push_back({action->line, "done only here"});
            finding.edits.push_back(take_out(walk, action->line, acts));
            finding.help = "move it up";
        }
        return;
    }
}

// By an act on the thing itself, at the last point at which its place is open.
void undo_before(const Walk& walk, std::size_t on, const Joined& found, Diagnostic& finding) {
    const bench::Wish no_wish = [](std::uint32_t) -> model::StateSet { return 0; };
    for (std::size_t at = on + 1; at-- > 0;) {
        const auto acts =
            bench::bring_to(walk.bench, walk.state_at(at), found.item, found.free, no_wish);
        const bool alone = acts && !acts->empty() &&
                           std::all_of(acts->begin(), acts->end(), [&](const bench::Act& act) {
                               return act.item == found.item;
                           });
        if (alone && replay(walk, at, *acts, on)) {
            mend_with(walk, finding, at, *acts);
            return moved_from_below(walk, on, *acts, finding);
        }
    }
    finding.help =
        fmt::format("undo that before {} is shut in", model::quoted(walk.model, found.item));
}

void find_on_over_joined(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (std::size_t at = 0; at < walk.events.size() && !walk.dangers.items.empty(); ++at) {
        const ItemId source = walk.events[at].act ? switched_on(walk, at) : ItemId{};
        const auto found =
            source.known() ? come_to(walk, walk.state_at(at + 1), source) : std::nullopt;
        if (!found)
            continue;
        const std::string& state = walk.model.kind_of(found->item).states[found->state];
        Diagnostic finding =
            finding_at(walk, at,
                       fmt::format("{} on while {} still `{}`", item_is(walk, source),
                                   item_is(walk, found->item), state));
        finding.label = "live from here";
        finding.why =
            fmt::format("what keeps it safe while it is worked on is a fault once {} is on",
                        model::quoted(walk.model, source));
        finding.related.push_back({walk.model.item(found->item).span, "declared here"});
        undo_before(walk, at, *found, finding);
        findings.push_back(std::move(finding));
    }
}

} // namespace

extern const Rule on_over_joined;
const Rule on_over_joined{"on-over-joined", "hazard", Severity::error,
                          "a supply switched on while what it charges is still joined",
                          find_on_over_joined};

} // namespace matchmark::check::rules
