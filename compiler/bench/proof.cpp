// Trials seen from the bench: when they can be done, and what they prove.
#include "bench/proof.hpp"

#include "model/driven.hpp"

#include <algorithm>
#include <iterator>
#include <set>

namespace matchmark::bench {

namespace {

const std::vector<ItemId>& path_of(const Model& model, model::FunctionId function) {
    return model.functions[function.value].through;
}

std::ptrdiff_t shared(const std::vector<ItemId>& some, const std::vector<ItemId>& others) {
    return std::count_if(some.begin(), some.end(),
                         [&](ItemId item) { return among(others, item); });
}

// A spring that its compressor still holds, and terminals that are still joined, are not as they
// are in use. In the first set that is asked only of what moves, a chain that is not joined, and of
// what guards it.
bool stands_as_it_may_stay(const Bench& bench, const State& state, ItemId id, unsigned first_set) {
    const model::Kind& kind = bench.model->kind_of(id);
    for (unsigned set = kind.moves || kind.guards ? 0 : first_set; set < kind.set_count(); ++set) {
        for (std::uint16_t member = 0; member < bench.model->item(id).count; ++member) {
            const model::StateId stands = state_of(bench, state, id, member, set);
            if (stands != kind.set_first[set] && !model::contains(kind.may_end, stands))
                return false;
        }
    }
    return true;
}

void add_holders(const Model& model, ItemId id, std::vector<ItemId>& items) {
    for (const ItemId tie : model.item(id).ties) {
        const model::Item& fastener = model.item(tie);
        const bool is_base = fastener.touches.size() > 1 && fastener.touches.back() == id;
        if (fastener.role == model::Role::fastener && !is_base)
            items.push_back(tie);
    }
}

// What moves under power is run only while it is fastened, to whatever, and what carries it is: a
// blade by its bolt, the drum by the bolts of its cradle. And behind its guard, with the screws in.
std::vector<ItemId> keeping_it_safe(const Model& model, ItemId id) {
    std::vector<ItemId> items;
    const model::Item& part = model.item(id);
    if (part.role != model::Role::part || !model::is_driven(model, part))
        return items;
    for (ItemId at = id; at.known(); at = model.item(at).carrier)
        add_holders(model, at, items);
    if (const ItemId guard = model::guard_of(model, part); guard.known()) {
        items.push_back(guard);
        add_holders(model, guard, items);
    }
    return items;
}

// A fluid without which its part is not run: one that is there in use, and may not be left out.
bool runs_on(const model::Kind& kind) {
    return kind.role == model::Role::fluid &&
           model::contains(kind.present, kind.set_first.front()) &&
           (kind.may_end & model::states_of_set(kind, 0) & ~kind.present) == 0;
}

// What carries a part of the path and not all of them: the wheel, of a brake on its disc. A unit
// that has the whole path in it may be tried on the bench.
std::vector<ItemId> carriers_apart(const Model& model, const std::vector<ItemId>& path) {
    std::vector<ItemId> carriers;
    for (const ItemId part : path) {
        if (model.item(part).role != model::Role::part)
            continue;
        for (ItemId at = model.item(part).carrier; at.known(); at = model.item(at).carrier) {
            const bool apart = std::any_of(path.begin(), path.end(), [&](ItemId other) {
                return model.item(other).role == model::Role::part &&
                       !model::is_in(model, other, at);
            });
            if (apart)
                carriers.push_back(at);
        }
    }
    return carriers;
}

// A plug or bleed screw that is `in` the part, and holds nothing.
bool closes_its_carrier(const Model& model, ItemId id) {
    return model.item(id).role == model::Role::fastener && model.item(id).touches.empty();
}

} // namespace

bool proves_item(const Model& model, const model::Step& test, ItemId item) {
    if (test.proves.empty())
        return true;
    return std::any_of(test.proves.begin(), test.proves.end(), [&](const model::Proof& proof) {
        return proof.function.known() ? among(path_of(model, proof.function), item)
                                      : proof.item == item;
    });
}

std::vector<ItemId> upholding(const Bench& bench, model::FunctionId function) {
    const Model& model = *bench.model;
    const std::vector<ItemId>& path = path_of(model, function);
    std::vector<ItemId> items;
    const auto add = [&](ItemId item) {
        if (bench.exists(item) && !among(items, item))
            items.push_back(item);
    };
    const auto add_fasteners_of = [&](const std::vector<ItemId>& parts) {
        for (const ItemId part : parts) {
            for (const ItemId tie : model.item(part).ties) {
                if (model.item(tie).role == model::Role::fastener &&
                    shared(parts, model.item(tie).touches) > 1)
                    add(tie);
            }
        }
    };
    for (const ItemId item : path)
        add(item);
    if (model.functions[function.value].is_rating) {
        for (const ItemId seal : path)
            add_fasteners_of(model.item(seal).touches);
        return items;
    }
    add_fasteners_of(path);
    for (const ItemId carrier : carriers_apart(model, path))
        add(carrier);
    for (const ItemId part : path) {
        for (const ItemId item : keeping_it_safe(model, part))
            add(item);
        // A door that is clamped, a tyre without air. A pressure that was let off is told by
        // itself.
        for (const ItemId carried : model.item(part).carried) {
            if (model.item(carried).role == model::Role::energy && !model.kind_of(carried).runs_out)
                add(carried);
        }
    }
    std::vector<ItemId> vessels = path;
    for (const ItemId tie : path) {
        const model::Kind& kind = model.kind_of(tie);
        for (const ItemId fastener : pressing(bench, tie))
            add(fastener);
        if (kind.laid_first || kind.lets_out) {
            const auto& joined = model.item(tie).touches;
            vessels.insert(vessels.end(), joined.begin(), joined.end());
        }
    }
    const auto is_run_on = [&](ItemId id) { return runs_on(model.kind_of(id)); };
    const bool filled = std::any_of(path.begin(), path.end(), is_run_on); // all the way along
    for (const ItemId part : vessels) {
        const auto& carried = model.item(part).carried;
        if (!filled && std::none_of(carried.begin(), carried.end(), is_run_on))
            continue;
        for (const ItemId id : carried) {
            if (runs_on(model.kind_of(id)) || closes_its_carrier(model, id))
                add(id);
        }
    }
    return items;
}

std::vector<ItemId> proven_items(const Bench& bench, const model::Step& test) {
    std::vector<ItemId> items;
    std::set<ItemId> known;
    const auto add = [&](ItemId item) {
        if (bench.exists(item) && known.insert(item).second)
            items.push_back(item);
    };
    for (const model::Proof& proof : test.proves) {
        if (proof.item.known()) {
            add(proof.item);
            for (const ItemId plug : plugs_asked(bench, test, proof.item))
                add(plug);
        }
        if (!proof.function.known())
            continue;
        for (const ItemId item : upholding(bench, proof.function))
            add(item);
    }
    return items;
}

std::vector<ItemId> plugs_of(const Bench& bench, ItemId part) {
    std::vector<ItemId> plugs;
    for (const ItemId tie : bench.model->item(part).ties) {
        if (bench.model->item(tie).role == model::Role::connector && bench.exists(tie))
            plugs.push_back(tie);
    }
    return plugs;
}

std::vector<ItemId> plugs_asked(const Bench& bench, const model::Step& test, ItemId part) {
    if (test.on_dead_circuits || bench.model->item(part).role != model::Role::part)
        return {};
    return plugs_of(bench, part);
}

bool conditions_hold(const Bench& bench, const State& state, const model::Step& test) {
    return std::all_of(test.when.begin(), test.when.end(), [&](const model::Condition& condition) {
        return holds(bench, state, condition);
    });
}

bool is_back(const Bench& bench, const State& state, ItemId item) {
    if (any_flag(*bench.model, state, item, given_up)) {
        const model::Kind& kind = bench.model->kind_of(item);
        return kind.role != model::Role::part && !kind.asks_test;
    }
    // An open cover is in its place as far as its function goes, and steam that has cooled comes
    // back by itself; a tie must bind again as it did.
    switch (bench.model->item(item).role) {
    case model::Role::part:
        return present(bench, state, item) && stands_as_it_may_stay(bench, state, item, 1);
    case model::Role::energy:
        return stands_as_it_may_stay(bench, state, item, 0);
    default:
        return in_first_state(bench, state, item);
    }
}

bool all_back(const Bench& bench, const State& state, const std::vector<ItemId>& items) {
    return std::all_of(items.begin(), items.end(),
                       [&](ItemId item) { return is_back(bench, state, item); });
}

std::vector<ItemId> hidden_in_whole(const Bench& bench, const State& whole,
                                    const std::vector<ItemId>& items) {
    std::vector<ItemId> hidden;
    // A fluid is under its cap when it is tried: nobody presses a brake with the reservoir open.
    std::copy_if(items.begin(), items.end(), std::back_inserter(hidden), [&](ItemId item) {
        return bench.model->item(item).role != model::Role::fluid && !reachable(bench, whole, item);
    });
    return hidden;
}

} // namespace matchmark::bench
