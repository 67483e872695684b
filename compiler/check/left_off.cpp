// Finds what is still off at the end, and works back to where it should have been put on.
#include "check/left_off.hpp"

#include "bench/proof.hpp"
#include "check/seals.hpp"
#include "check/trials.hpp"

#include <algorithm>
#include <iterator>

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

bool needs_back(const Walk& walk, std::size_t test, ItemId item) {
    const model::Step& step = walk.step(walk.events[test]);
    const bool said = std::any_of(step.when.begin(), step.when.end(), [&](const auto& condition) {
        return condition.item.item == item;
    });
    const auto proven = bench::proven_items(walk.bench, step);
    return !said && (among(proven, item) || done_under(walk, test, item));
}

// Of the tests after it left that need it back, the first, and the last if that is another.
std::vector<std::size_t> tests_of(const Walk& walk, const Pending& pending) {
    std::vector<std::size_t> tests;
    for (std::size_t i = pending.left; i < walk.events.size(); ++i) {
        if (walk.events[i].action || !needs_back(walk, i, pending.item))
            continue;
        tests.resize(std::min<std::size_t>(tests.size(), 1));
        tests.push_back(i);
    }
    return tests;
}

// For each item the last event at which something is done to it, by the guide or by the walk.
std::vector<std::size_t> last_touches(const Walk& walk) {
    std::vector<std::size_t> last(walk.model.items.size());
    const auto note = [&](ItemId item, std::size_t at) {
        last[item.value] = std::max(last[item.value], at);
    };
    for (std::size_t i = 0; i < walk.events.size(); ++i) {
        if (walk.events[i].act)
            note(walk.events[i].act->item, i);
        if (const model::Action* action = walk.action(walk.events[i])) {
            for (const model::Target& target : action->targets)
                note(target.ref.item, i);
        }
    }
    const auto note_all = [&](const std::vector<Act>& acts, std::size_t at) {
        for (const Act& act : acts)
            note(act.item, at);
    };
    for (const Trouble& trouble : walk.troubles)
        note_all(trouble.missing, std::max(trouble.mend_at, trouble.event));
    for (const LeftOff& found : walk.left_off)
        note_all(found.acts, found.at);
    return last;
}

// Do the acts, done here, open something that nothing after them closes, and that is home at the
// end? Then they do not belong here, which is sooner known than by doing all the rest again.
bool leaves_open(const Walk& walk, const Place& place, const std::vector<Pending>& pending,
                 const std::vector<std::size_t>& last_touch) {
    std::vector<Pending> at_stake;
    for (const Act& act : place.acts) {
        const Pending opened{act.item, 0, home_of(walk.model.kind_of(act.item), 0), 0};
        const bool known = std::any_of(pending.begin(), pending.end(), [&](const Pending& entry) {
            return entry.item == act.item;
        });
        if (last_touch[act.item.value] < place.at && !known && !away(walk, walk.end, opened))
            at_stake.push_back(opened);
    }
    if (at_stake.empty())
        return false;
    State state = walk.state_at(place.at);
    for (const Act& act : place.acts)
        bench::perform(walk.bench, state, act);
    return std::any_of(at_stake.begin(), at_stake.end(),
                       [&](const Pending& opened) { return away(walk, state, opened); });
}

enum class Seals : unsigned char { anywhere, between_open };

std::optional<Place> last_place_up_to(const Walk& walk, const Pending& wanted,
                                      const std::vector<Pending>& pending, std::size_t last,
                                      Seals seals = Seals::anywhere) {
    const bench::Wish no_wish = [](std::uint32_t) -> model::StateSet { return 0; };
    const std::size_t before = count_away(walk, walk.end, pending);
    const auto last_touch = last_touches(walk);
    for (std::size_t at = last + 1; at-- > wanted.left;) {
        const auto acts =
            bench::bring_to(walk.bench, walk.state_at(at), wanted.item, wanted.home, no_wish);
        if (!acts || acts->empty() || leaves_open(walk, {at, *acts}, pending, last_touch) ||
            (seals == Seals::between_open && is_together(walk, walk.state_at(at), wanted.item)))
            continue;
        const auto end = replay(walk, at, *acts, walk.events.size());
        if (!end || away(walk, *end, wanted) || count_away(walk, *end, pending) >= before)
            continue;
        if (others_untouched(walk, *end, pending))
            return Place{at, *acts};
    }
    return std::nullopt;
}

// The first event after it left at which something is filled, or a source is on its way back: what
// holds and seals is back before that.
std::optional<std::size_t> first_restoring(const Walk& walk, const Pending& wanted) {
    for (std::size_t at = wanted.left + 1; at < walk.events.size(); ++at) {
        const auto& act = walk.events[at].act;
        if (!act || walk.step(walk.events[at]).section != model::Section::put_back)
            continue;
        const model::Kind& kind = walk.model.kind_of(act->item);
        const bool flows = kind.role == model::Role::energy || kind.role == model::Role::fluid;
        if (flows && model::leads_home(kind, kind.verbs[act->verb]))
            return at;
    }
    return std::nullopt;
}

std::optional<Place> last_place(const Walk& walk, const Pending& wanted,
                                const std::vector<Pending>& pending) {
    if (walk.model.kind_of(wanted.item).laid_first) {
        auto place =
            last_place_up_to(walk, wanted, pending, walk.events.size(), Seals::between_open);
        if (place)
            return place;
    }
    if (model::is_tie(walk.model.item(wanted.item).role)) {
        const auto restoring = first_restoring(walk, wanted);
        auto place = restoring ? last_place_up_to(walk, wanted, pending, *restoring) : std::nullopt;
        if (place)
            return place;
    }
    for (const std::size_t test : tests_of(walk, wanted)) {
        if (auto place = last_place_up_to(walk, wanted, pending, test))
            return place;
    }
    return last_place_up_to(walk, wanted, pending, walk.events.size());
}

bool covered_after(const Walk& walk, const Place& place) {
    if (place.at >= walk.events.size())
        return false;
    const auto reason = bench::refusal(walk.bench, walk.state_at(place.at + 1), place.acts.front());
    return reason && std::holds_alternative<bench::OutOfReach>(*reason);
}

// Among those already found, the one that puts this item back too, on the way to something else.
void add_to_another(Walk& walk, const Pending& entry) {
    for (LeftOff& found : walk.left_off) {
        const bool moved = std::any_of(found.acts.begin(), found.acts.end(),
                                       [&](const Act& act) { return act.item == entry.item; });
        if (!moved)
            continue;
        found.items.push_back(entry.item);
        return;
    }
}

void add_found(Walk& walk, const Pending& entry, const Place& place) {
    const bool covered = covered_after(walk, place);
    patch(walk, place.at, place.acts, walk.events.size());
    const auto same = std::find_if(walk.left_off.begin(), walk.left_off.end(),
                                   [&](const LeftOff& found) { return found.at == place.at; });
    if (same == walk.left_off.end()) {
        walk.left_off.push_back({place.at, covered, {entry.item}, place.acts});
        return;
    }
    same->closed_in = same->closed_in || covered;
    same->items.push_back(entry.item);
    same->acts.insert(same->acts.end(), place.acts.begin(), place.acts.end());
}

// The trouble that the walk overcame by moving the item, which no line of the guide moves.
Trouble* moved_for(Walk& walk, ItemId item) {
    const auto moves = [&](const Act& act) { return act.item == item; };
    if (std::any_of(walk.events.begin(), walk.events.end(),
                    [&](const Event& event) { return event.act && moves(*event.act); }))
        return nullptr;
    const auto found =
        std::find_if(walk.troubles.begin(), walk.troubles.end(), [&](const Trouble& trouble) {
            return std::any_of(trouble.missing.begin(), trouble.missing.end(), moves);
        });
    return found == walk.troubles.end() ? nullptr : &*found;
}

// Who forgets the plug on the way in forgets it on the way home: one omission, told where it is
// met.
void tell_as_way_back(Walk& walk, LeftOff& found) {
    for (const ItemId item : std::vector<ItemId>(found.items)) {
        LeftOff back{found.at, false, {item}, {}};
        std::copy_if(found.acts.begin(), found.acts.end(), std::back_inserter(back.acts),
                     [&](const Act& act) { return act.item == item; });
        Trouble* trouble = found.closed_in || back.acts.empty() ? nullptr : moved_for(walk, item);
        if (trouble == nullptr)
            continue;
        trouble->way_back.push_back(std::move(back));
        std::erase(found.items, item);
        std::erase_if(found.acts, [&](const Act& act) { return act.item == item; });
    }
}

} // namespace

void find_left_off(Walk& walk) {
    const std::vector<Pending> pending = pending_at_end(walk);
    LeftOff lost;
    lost.at = walk.events.size();
    for (const Pending& entry : pending) {
        if (!away(walk, walk.end, entry)) {
            add_to_another(walk, entry);
        } else if (const auto place = last_place(walk, entry, pending)) {
            add_found(walk, entry, *place);
        } else {
            lost.items.push_back(entry.item);
        }
    }
    std::stable_sort(walk.left_off.begin(), walk.left_off.end(),
                     [](const LeftOff& a, const LeftOff& b) { return a.at < b.at; });
    if (!lost.items.empty())
        walk.left_off.push_back(std::move(lost));
    // What the walk itself took off belongs to the finding for which it did.
    for (LeftOff& found : walk.left_off)
        std::erase_if(found.items, [&](ItemId item) { return moved_by_walk(walk, item); });
    for (LeftOff& found : walk.left_off)
        tell_as_way_back(walk, found);
    std::erase_if(walk.left_off, [](const LeftOff& found) { return found.items.empty(); });
}

} // namespace matchmark::check
