// Finds what is still off at the end, and works back to where it should have been put on.
#include "check/left_off.hpp"

#include <algorithm>
#include <map>

namespace matchmark::check {

using bench::Act;
using bench::State;
using model::ItemId;

namespace {

struct Pending {
    ItemId item;
    unsigned set = 0;
    model::StateSet home = 0;
    std::size_t left = 0; // event
};

bool away(const Walk& walk, const State& state, const Pending& pending) {
    const model::Item& item = walk.model.item(pending.item);
    for (std::uint16_t m = 0; m < item.count; ++m) {
        if ((state.flags[item.first_member + m] & bench::given_up) != 0)
            continue;
        if (!model::contains(pending.home,
                             bench::state_of(walk.bench, state, pending.item, m, pending.set))) {
            return true;
        }
    }
    return false;
}

model::StateSet home_of(const model::Kind& kind, unsigned set) {
    model::StateSet home = model::in_set(kind.set_first[set]);
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        const auto state = static_cast<model::StateId>(i);
        if (kind.set_of[i] == set && model::contains(kind.may_end, state))
            home |= model::in_set(state);
    }
    return home;
}

// What left last goes back first.
std::vector<Pending> pending_at_end(const Walk& walk) {
    std::vector<Pending> all;
    for (std::uint32_t i = 0; i < walk.model.items.size(); ++i) {
        const model::Kind& kind = walk.model.kind_of(ItemId{i});
        if (!walk.bench.exists(ItemId{i}))
            continue;
        for (unsigned set = 0; set < kind.set_count(); ++set) {
            Pending pending{ItemId{i}, set, home_of(kind, set), 0};
            if (!away(walk, walk.end, pending))
                continue;
            pending.left = last_left(walk, ItemId{i}).value_or(0);
            all.push_back(pending);
        }
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Pending& a, const Pending& b) { return a.left > b.left; });
    return all;
}

std::size_t count_away(const Walk& walk, const State& state, const std::vector<Pending>& pending) {
    return static_cast<std::size_t>(
        std::count_if(pending.begin(), pending.end(),
                      [&](const Pending& entry) { return away(walk, state, entry); }));
}

// Everything that was home at the end still is: nothing was opened to get at the rest and left
// open.
bool others_untouched(const Walk& walk, const State& end, const std::vector<Pending>& pending) {
    for (std::uint32_t i = 0; i < walk.model.items.size(); ++i) {
        const model::Kind& kind = walk.model.kind_of(ItemId{i});
        if (!walk.bench.exists(ItemId{i}))
            continue;
        for (unsigned set = 0; set < kind.set_count(); ++set) {
            const Pending here{ItemId{i}, set, home_of(kind, set), 0};
            const bool known =
                std::any_of(pending.begin(), pending.end(), [&](const Pending& entry) {
                    return entry.item == here.item && entry.set == set;
                });
            if (!known && away(walk, end, here))
                return false;
        }
    }
    return true;
}

struct Place {
    std::size_t at = 0;
    std::vector<Act> acts;
};

std::optional<Place> last_place(const Walk& walk, const Pending& wanted,
                                const std::vector<Pending>& pending) {
    const bench::Wish no_wish = [](std::uint32_t) -> model::StateSet { return 0; };
    const std::size_t before = count_away(walk, walk.end, pending);
    for (std::size_t at = walk.events.size() + 1; at-- > wanted.left;) {
        const auto acts =
            bench::bring_to(walk.bench, walk.state_at(at), wanted.item, wanted.home, no_wish);
        if (!acts || acts->empty())
            continue;
        const auto end = replay(walk, at, *acts);
        if (!end || away(walk, *end, wanted) || count_away(walk, *end, pending) >= before)
            continue;
        if (others_untouched(walk, *end, pending))
            return Place{at, *acts};
    }
    return std::nullopt;
}

bool covered_after(const Walk& walk, const Place& place) {
    if (place.at >= walk.events.size())
        return false;
    const auto reason = bench::refusal(walk.bench, walk.state_at(place.at + 1), place.acts.front());
    return reason && std::holds_alternative<bench::OutOfReach>(*reason);
}

} // namespace

std::optional<std::size_t> last_left(const Walk& walk, ItemId item) {
    for (std::size_t i = walk.events.size(); i-- > 0;) {
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

std::vector<LeftOff> left_off(const Walk& walk) {
    Walk patched = walk;
    const std::vector<Pending> pending = pending_at_end(walk);
    std::map<std::size_t, LeftOff> by_place;
    LeftOff lost;
    for (const Pending& entry : pending) {
        if (!away(patched, patched.end, entry)) {
            // Put back on the way to something else: it belongs to that finding.
            for (auto& [at, found] : by_place) {
                const bool moved =
                    std::any_of(found.acts.begin(), found.acts.end(),
                                [&](const Act& act) { return act.item == entry.item; });
                if (moved)
                    found.items.push_back(entry.item);
            }
            continue;
        }
        const auto place = last_place(patched, entry, pending);
        if (!place) {
            lost.items.push_back(entry.item);
            continue;
        }
        const bool covered = covered_after(patched, *place);
        patch(patched, place->at, place->acts);
        LeftOff& found = by_place[place->at];
        found.at = place->at;
        found.closed_in = found.closed_in || covered;
        found.items.push_back(entry.item);
        found.acts.insert(found.acts.end(), place->acts.begin(), place->acts.end());
    }
    std::vector<LeftOff> all;
    for (auto& [at, found] : by_place)
        all.push_back(std::move(found));
    lost.at = walk.events.size();
    if (!lost.items.empty())
        all.push_back(std::move(lost));
    return all;
}

} // namespace matchmark::check
