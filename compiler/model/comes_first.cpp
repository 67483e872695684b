// Reads from ties and sources which tie waits for which.
#include "model/comes_first.hpp"

#include "model/driven.hpp"
#include "model/implied_need.hpp"

#include <algorithm>
#include <iterator>

namespace matchmark::model {

namespace {

// The last state of its first set in which the tie holds nothing; nothing when it always does.
std::optional<StateId> let_go(const Kind& tie) {
    for (std::size_t state = tie.states.size(); state-- > 0;) {
        const auto id = static_cast<StateId>(state);
        if (tie.set_of[state] == 0 && !contains(tie.binds, id))
            return id;
    }
    return std::nullopt;
}

// To let go of the tie, `first` has to have let go.
void wait_for(Model& model, ItemId tie, ItemId first, NeedOf of) {
    const Kind& kind = model.kind_of(tie);
    const auto state = let_go(model.kind_of(first));
    for (const Verb& verb : kind.verbs) {
        // Glue on a cell is not heated while the cell is joined, either.
        const bool frees = of == NeedOf::cell && kind.role == Role::bond ? !leads_home(kind, verb)
                                                                         : lets_go(kind, verb);
        if (!state || !frees || asks_itself(model.item(tie), verb.name, first))
            continue;
        model.items.edit(tie.value).needs.push_back(need_of(model, first, *state, verb.name, of));
    }
}

// A pin by its clip, a nut by its split pin. Of two that hold each other neither is the first.
void settle_holders(Model& model) {
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        const Item& holder = model.items[i];
        if (holder.role != Role::fastener || holder.touches.size() < 2)
            continue;
        for (std::size_t n = 0; n + 1 < holder.touches.size(); ++n) {
            const ItemId held = model.items[i].touches[n];
            if (model.item(held).role == Role::fastener &&
                !among(model.item(held).touches, ItemId{i}))
                wait_for(model, held, ItemId{i}, NeedOf::holder);
        }
    }
}

// All that may have to come off before the item can be got at: what is in its way, what ties and
// blocks that, and so on.
class InTheWay {
public:
    InTheWay(const Model& model, ItemId item) : has_(model.items.size()) {
        add(item);
        for (std::size_t i = 0; i < found_.size(); ++i)
            add_before(model.item(found_[i]), found_[i] == item);
    }
    [[nodiscard]] bool has(ItemId id) const { return has_[id.value]; }
    [[nodiscard]] bool is_clear() const { return found_.size() == 1; }

private:
    void add(ItemId id) {
        if (!has_[id.value])
            found_.push_back(id);
        has_[id.value] = true;
    }
    void add_before(const Item& item, bool is_wanted) {
        for (const ReachClause& clause : item.reach) {
            for (const auto& way : clause.ways) {
                for (const ItemRef& ref : way)
                    add(ref.item);
            }
        }
        for (const Need& need : item.needs)
            add(need.condition.item.item);
        if (is_wanted)
            return; // what it ties itself may stay
        for (const ItemId tie : item.ties)
            add(tie);
        for (const ItemId part : item.blocked_by)
            add(part);
        for (const ItemId part : item.carried)
            add(part);
    }

    std::vector<bool> has_;
    std::vector<ItemId> found_;
};

struct Plug {
    ItemId plug;
    InTheWay before;
};

// The plugs that cut the source off from all that it feeds.
std::vector<Plug> plugs_of(const Model& model, ItemId source) {
    std::vector<Plug> plugs;
    for (const ItemId plug : model.item(source).through)
        plugs.push_back({plug, InTheWay(model, plug)});
    return plugs;
}

bool is_cell(const Model& model, ItemId source) {
    const Item& item = model.item(source);
    return item.role == Role::part && !item.through.empty() &&
           !cut_from_outside(model.kind(item.kind));
}

enum class At : unsigned char { whatever_comes_off, once };

// The first plug that is got at while the tie holds.
void part_first(Model& model, const std::vector<Plug>& plugs, ItemId tie, At at) {
    const auto free = std::find_if(plugs.begin(), plugs.end(), [&](const Plug& plug) {
        return plug.plug != tie && !plug.before.has(tie) &&
               (at == At::whatever_comes_off || plug.before.is_clear());
    });
    if (free != plugs.end())
        wait_for(model, tie, free->plug, NeedOf::cell);
}

// For each source what holds what it drives, and the guards of that.
std::vector<std::pair<ItemId, ItemId>> holding_driven(const Model& model) {
    std::vector<std::pair<ItemId, ItemId>> found;
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        for (const ItemId part : driven_held_by(model, model.items[i])) {
            for (const ItemId source : model.item(part).fed_by) {
                if (is_cell(model, source))
                    found.emplace_back(source, ItemId{i});
            }
        }
    }
    std::sort(found.begin(), found.end());
    found.erase(std::unique(found.begin(), found.end()), found.end());
    return found;
}

void settle_cells(Model& model) {
    const auto held = holding_driven(model);
    const std::vector<ItemId> sources = model.sources.all();
    for (const ItemId source : sources) {
        if (!is_cell(model, source))
            continue;
        const std::vector<Plug> plugs = plugs_of(model, source);
        const std::vector<ItemId> ties = model.item(source).ties;
        for (const ItemId tie : ties) {
            if (model.item(tie).role == Role::bond)
                part_first(model, plugs, tie, At::whatever_comes_off);
        }
        const auto first = std::lower_bound(held.begin(), held.end(), std::pair(source, ItemId{0}));
        for (auto at = first; at != held.end() && at->first == source; ++at)
            part_first(model, plugs, at->second, At::once); // nobody opens more than the job asks
    }
}

// A pack that hangs on its own plug cannot go before it: the plug is pulled under power.
void settle_own_plugs(Model& model) {
    const std::vector<ItemId> sources = model.sources.all();
    for (const ItemId source : sources) {
        const Item& item = model.item(source);
        if (item.role != Role::part || !cut_from_outside(model.kind(item.kind)))
            continue;
        const std::vector<ItemId> plugs = item.through;
        for (const ItemId plug : plugs) {
            if (among(model.item(plug).touches, source))
                model.items.edit(plug.value).safe_when_live = true;
        }
    }
}

} // namespace

void settle_what_comes_first(Model& model) {
    settle_holders(model);
    settle_cells(model);
    settle_own_plugs(model);
}

std::vector<ItemId> parted_before(const Model& model, ItemId item) {
    std::vector<ItemId> found;
    const auto& joined = model.item(item).touches;
    if (joined.empty())
        return found;
    const auto& ties = model.item(joined.front()).ties;
    std::copy_if(ties.begin(), ties.end(), std::back_inserter(found), [&](ItemId tie) {
        const Kind& kind = model.kind_of(tie);
        return kind.role == Role::connector && !kind.parted_last;
    });
    return found;
}

} // namespace matchmark::model
