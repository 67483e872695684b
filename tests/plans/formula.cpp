// Writes what the bench knows of a moment as expressions over the times of the acts.
#include "plans/formula.hpp"

#include "model/passing_on.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::plans {

using model::contains;
using model::Item;
using model::ItemId;
using model::ItemRef;
using model::Kind;
using model::Role;
using model::StateId;
using model::StateSet;

namespace {

std::string joined(const char* word, const std::vector<std::string>& parts, const char* unit,
                   const char* zero) {
    std::vector<std::string> kept;
    for (const std::string& part : parts) {
        if (part == zero)
            return zero;
        if (part != unit && std::find(kept.begin(), kept.end(), part) == kept.end())
            kept.push_back(part);
    }
    if (kept.empty())
        return unit;
    if (kept.size() == 1)
        return kept.front();
    std::string text = std::string("(") + word;
    for (const std::string& part : kept)
        text += " " + part;
    return text + ")";
}

bool names_apart(const model::Model& model, ItemId id) {
    const auto names = [&](const ItemRef& ref) { return ref.item == id && !ref.members.empty(); };
    for (const Item& item : model.items) {
        for (const auto& need : item.needs) {
            if (names(need.condition.item))
                return true;
        }
        for (const auto& clause : item.reach) {
            for (const auto& way : clause.ways) {
                if (std::any_of(way.begin(), way.end(), names))
                    return true;
            }
        }
    }
    return false;
}

} // namespace

bool passes_over(const model::Verb& named, model::StateId from, model::StateId to) {
    const auto [nearer, further] = std::minmax(from, to);
    bool starts_there = false;
    for (model::StateId state = nearer; state <= further; ++state)
        starts_there = starts_there || contains(named.from, state);
    return starts_there && nearer <= named.to && named.to <= further;
}

std::string all_of(const std::vector<std::string>& parts) {
    return joined("and", parts, "true", "false");
}

std::string any_of(const std::vector<std::string>& parts) {
    return joined("or", parts, "false", "true");
}

std::string no(const std::string& expression) {
    if (expression == "true")
        return "false";
    return expression == "false" ? "true" : "(not " + expression + ")";
}

Formula::Formula(const bench::Bench& on)
    : bench(on), model(*on.model), things_of(model.items.size()) {
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if (!bench.exists(ItemId{i}))
            continue;
        const Item& item = model.items[i];
        std::vector<std::uint16_t> all;
        for (std::uint16_t member = 1; member <= item.count; ++member)
            all.push_back(member);
        std::vector<std::vector<std::uint16_t>> groups{all};
        if (names_apart(model, ItemId{i})) {
            groups.clear();
            for (const auto member : all)
                groups.push_back({member});
        }
        for (auto& members : groups) {
            things_of[i].push_back(things.size());
            things.push_back({ItemId{i}, std::move(members)});
        }
    }
    for (std::size_t t = 0; t < things.size(); ++t) {
        const Kind& kind = model.kind_of(things[t].item);
        for (std::size_t v = 0; v < kind.verbs.size(); ++v) {
            const StateId to = kind.verbs[v].to;
            for (StateId from = 0; from < to; ++from) { // outwards
                const bool goes_in = kind.set_of[to] == 0 && contains(kind.present, to) &&
                                     !contains(kind.present, from);
                if (contains(kind.verbs[v].from, from) && kind.set_of[from] == kind.set_of[to] &&
                    !goes_in)
                    deeds.push_back({t, v, from, to, kind.set_of[to]});
            }
        }
    }
    for (std::size_t d = 0; d < deeds.size(); ++d)
        text += fmt::format("(declare-const d{0} Bool)\n(declare-const t{0} Int)\n", d);
}

std::string Formula::define(const std::string& expression) {
    if (expression.size() < 12)
        return expression;
    text += fmt::format("(define-fun f{} () Bool {})\n", defined_, expression);
    return fmt::format("f{}", defined_++);
}

// Two acts are not done at one time where it matters which comes first.
void Formula::apart(std::size_t one, std::size_t other) {
    if (one != other && apart_.insert(std::minmax(one, other)).second)
        text += fmt::format("(assert (not (= t{} t{})))\n", one, other);
}

// It was brought there before, or stood there from the start; and nothing that leaves it is done
// before.
std::string Formula::state(std::size_t thing, unsigned set, StateId state, Moment at) {
    if (!at.end && deeds[at.deed].thing == thing && deeds[at.deed].set == set) {
        const Deed& deed = deeds[at.deed];
        return state == (at.after ? deed.to : deed.from) ? "true" : "false";
    }
    const auto key = std::make_tuple(thing, set, static_cast<unsigned>(state),
                                     at.end ? deeds.size() : at.deed, at.end);
    if (const auto known = known_.find(key); known != known_.end())
        return known->second;
    const Kind& kind = model.kind_of(things[thing].item);
    std::vector<std::string> came;
    if (state == kind.set_first[set])
        came.emplace_back("true");
    std::vector<std::string> both;
    for (std::size_t d = 0; d < deeds.size(); ++d) {
        const Deed& deed = deeds[d];
        if (deed.thing != thing || deed.set != set)
            continue;
        if (!at.end && (deed.to == state || deed.from == state))
            apart(d, at.deed);
        if (deed.to == state)
            came.push_back(at.end ? fmt::format("d{}", d)
                                  : fmt::format("(and d{0} (< t{0} t{1}))", d, at.deed));
        if (deed.from == state)
            both.push_back(at.end ? fmt::format("(not d{})", d)
                                  : fmt::format("(or (not d{0}) (< t{1} t{0}))", d, at.deed));
    }
    both.push_back(any_of(came));
    std::string found = define(all_of(both));
    known_.emplace(key, found);
    return found;
}

std::string Formula::member_in(std::size_t thing, StateSet states, Moment at) {
    const Kind& kind = model.kind_of(things[thing].item);
    std::vector<std::string> any;
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        const auto s = static_cast<StateId>(i);
        if (contains(states, s))
            any.push_back(state(thing, kind.set_of[s], s, at));
    }
    return any_of(any);
}

std::string Formula::any_in(const ItemRef& ref, StateSet states, Moment at) {
    std::vector<std::string> any;
    for (const std::size_t thing : things_of[ref.item.value]) {
        const auto& members = things[thing].members;
        const bool meant = ref.members.empty() ||
                           std::any_of(members.begin(), members.end(), [&](std::uint16_t member) {
                               return std::find(ref.members.begin(), ref.members.end(), member) !=
                                      ref.members.end();
                           });
        if (meant)
            any.push_back(member_in(thing, states, at));
    }
    return any_of(any);
}

std::string Formula::all_in(const ItemRef& ref, StateSet states, Moment at) {
    std::vector<std::string> all;
    for (const std::size_t thing : things_of[ref.item.value]) {
        const auto& members = things[thing].members;
        if (ref.members.empty() ||
            std::find(ref.members.begin(), ref.members.end(), members.front()) != ref.members.end())
            all.push_back(member_in(thing, states, at));
    }
    return all_of(all);
}

std::string Formula::present(ItemId item, Moment at) {
    return any_in({item, {}, {}}, model.kind_of(item).present, at);
}

std::string Formula::binds(ItemId tie, Moment at) {
    return any_in({tie, {}, {}}, model.kind_of(tie).binds, at);
}

std::string Formula::live(ItemId source, Moment at) {
    std::vector<std::string> all{on(source, at)};
    for (const ItemId connector : model.item(source).through) {
        if (bench.exists(connector))
            all.push_back(binds(connector, at));
    }
    return all_of(all);
}

std::string Formula::on(ItemId source, Moment at) {
    return any_in({source, {}, {}}, model.kind_of(source).live, at);
}

bool cut_outside(const model::Kind& kind) {
    return std::any_of(kind.verbs.begin(), kind.verbs.end(), [&](const model::Verb& verb) {
        return verb.from_outside && (verb.from & kind.live) != 0 &&
               !model::contains(kind.live, verb.to);
    });
}

std::string Formula::joined(ItemId source, ItemId part, Moment at) {
    std::vector<std::string> all;
    for (const ItemId connector : model.item(source).through) {
        if (bench.exists(connector))
            all.push_back(binds(connector, at));
    }
    for (const ItemId connector : model::connectors_to(model.item(source), part)) {
        if (bench.exists(connector))
            all.push_back(binds(connector, at));
    }
    return all_of(all);
}

std::string Formula::safe(ItemId item, StateSet states, Moment at) {
    return all_in({item, {}, {}}, states, at);
}

std::vector<ItemId> Formula::chain(ItemId item) const {
    std::vector<ItemId> found;
    for (; item.known(); item = model.item(item).carrier)
        found.push_back(item);
    return found;
}

ItemId Formula::stands_on(ItemId id) const {
    const Item& item = model.item(id);
    if (item.carrier.known())
        return item.carrier;
    ItemId base;
    for (const ItemId part : item.touches) {
        if (bench.exists(part))
            base = part;
    }
    return base;
}

std::string Formula::goes_with(ItemId part, ItemId top, Moment at) {
    std::vector<std::string> all;
    for (ItemId here = part; here != top; here = model.item(here).carrier) {
        if (!here.known())
            return "false";
        all.push_back(present(here, at));
    }
    return all_of(all);
}

std::string Formula::place_is(ItemId item, ItemId piece, Moment at) {
    std::vector<std::string> all;
    for (const ItemId here : chain(item)) {
        if (here == piece) {
            all.push_back(no(present(here, at)));
            return all_of(all);
        }
        all.push_back(present(here, at));
    }
    return piece.known() ? "false" : all_of(all);
}

// A tie while it binds; a part while it covers and lies where the item is worked at.
std::string Formula::in_the_way(const ItemRef& ref, ItemId item, bool at_seat, Moment at) {
    const Kind& kind = model.kind_of(ref.item);
    std::string stands = any_in(ref, model::is_tie(kind.role) ? kind.binds : kind.covers, at);
    if (kind.role != Role::part || stands == "false")
        return stands;
    if (!at_seat)
        return all_of({stands, place_is(ref.item, item, at)});
    const ItemId seat = stands_on(item);
    std::vector<ItemId> pieces = chain(ref.item);
    pieces.emplace_back(); // the device
    std::vector<std::string> same;
    for (const ItemId piece : pieces)
        same.push_back(all_of({place_is(ref.item, piece, at), place_is(seat, piece, at)}));
    return all_of({stands, any_of(same)});
}

std::string Formula::reach(ItemId item, bool at_seat, ItemId with, Moment at) {
    std::vector<std::string> lines;
    for (const auto& clause : model.item(item).reach) {
        std::vector<std::string> ways;
        for (const auto& way : clause.ways) {
            std::vector<std::string> clear;
            for (const ItemRef& ref : way) {
                if (!bench.exists(ref.item))
                    continue;
                std::vector<std::string> free{no(in_the_way(ref, item, at_seat, at))};
                if (with.known())
                    free.push_back(goes_with(ref.item, with, at));
                clear.push_back(any_of(free));
            }
            ways.push_back(all_of(clear));
        }
        if (!ways.empty())
            lines.push_back(any_of(ways));
    }
    return define(all_of(lines));
}

// A part where it lies: on the device, or itself a piece on the bench, or in one.
std::string Formula::reachable(ItemId item, Moment at) {
    if (model.item(item).role != Role::part)
        return reach(item, true, {}, at);
    // At its seat while it is in place; else it lies by itself.
    const std::string here = present(item, at);
    return any_of({all_of({here, reach(item, true, {}, at)}),
                   all_of({no(here), reach(item, false, {}, at)})});
}

} // namespace matchmark::plans
