// Matches what the work obliges one to prove with the tests that prove it.
#include "check/trials.hpp"

#include "bench/running.hpp"
#include "check/claims.hpp"
#include "check/troubles.hpp"
#include "model/describe.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace matchmark::check {

using model::FunctionId;
using model::ItemId;

namespace {

// A tie is disturbed when it no longer stands as assembled; a part when it is renewed. To switch a
// source off and on disturbs nothing.
bool disturbs(const Walk& walk, const Event& event, ItemId item) {
    if (event.act) {
        const model::Kind& kind = walk.model.kind_of(item);
        const model::Verb& verb = walk.model.kind_of(event.act->item).verbs[event.act->verb];
        return event.act->item == item && kind.role != model::Role::part &&
               kind.role != model::Role::energy && verb.to != kind.set_first[kind.set_of[verb.to]];
    }
    const model::Action* action = walk.action(event);
    if (action == nullptr || action->sort != model::ActionSort::replace)
        return false;
    return std::any_of(action->targets.begin(), action->targets.end(),
                       [&](const model::Target& target) { return target.ref.item == item; });
}

// For each item the last event that disturbs it; none: nothing does.
using Disturbances = std::vector<std::optional<std::size_t>>;

Disturbances last_disturbances(const Walk& walk) {
    Disturbances last(walk.model.items.size());
    const auto note = [&](std::size_t event, ItemId item) {
        if (walk.bench.exists(item) && disturbs(walk, walk.events[event], item))
            last[item.value] = event;
    };
    for (std::size_t i = 0; i < walk.events.size(); ++i) {
        if (walk.events[i].act) {
            note(i, walk.events[i].act->item);
        } else if (const model::Action* action = walk.action(walk.events[i])) {
            for (const auto& target : action->targets)
                note(i, target.ref.item);
        }
    }
    return last;
}

// What is in a part that is renewed comes new with it, unless it was taken out of it before.
std::optional<std::size_t> disturbed_with_carrier(const Walk& walk, const Disturbances& disturbed,
                                                  ItemId item) {
    std::optional<std::size_t> last;
    for (ItemId at = item; walk.model.item(at).carrier.known();) {
        const ItemId carrier = walk.model.item(at).carrier;
        const auto event = disturbed[carrier.value];
        if (event && bench::present(walk.bench, walk.state_at(*event), at))
            last = std::max(last, event);
        at = carrier;
    }
    return last;
}

bool on_some_path(const Walk& walk, ItemId item) {
    const auto& functions = walk.model.functions;
    return std::any_of(functions.begin(), functions.end(), [&](const model::Function& function) {
        return among(function.through, item);
    });
}

// Ties whose kind wants them tried once they are made again; the function that goes through one
// asks for more. Of whoever may not touch them nothing is asked: that they are worked on is
// reported.
void add_ties_to_test(const Walk& walk, const Disturbances& disturbed,
                      std::vector<Obligation>& all) {
    for (std::uint32_t i = 0; i < walk.model.items.size(); ++i) {
        const ItemId id{i};
        const model::Kind& kind = walk.model.kind_of(id);
        if (kind.asks_test && disturbed[i] && may_do(walk.guide(), kind) && !on_some_path(walk, id))
            all.push_back({id, {}, *disturbed[i], {id}, {}});
    }
}

std::vector<Obligation> obligations(const Walk& walk) {
    std::vector<Obligation> all;
    for (std::size_t i = 0; i < walk.events.size(); ++i) {
        const model::Action* action = walk.action(walk.events[i]);
        if (action == nullptr || action->sort != model::ActionSort::replace)
            continue;
        for (const auto& target : action->targets) {
            const model::Item& item = walk.model.item(target.ref.item);
            if (item.role == model::Role::part && !item.one_use &&
                walk.bench.exists(target.ref.item)) {
                all.push_back({target.ref.item, {}, i, {target.ref.item}, {}});
            }
        }
    }
    const auto disturbed = last_disturbances(walk);
    for (std::uint32_t f = 0; f < walk.model.functions.size(); ++f) {
        std::optional<std::size_t> cause;
        for (const ItemId item : walk.model.functions[f].through)
            cause = std::max(
                {cause, disturbed[item.value], disturbed_with_carrier(walk, disturbed, item)});
        if (cause) {
            all.push_back(
                {{}, FunctionId{f}, *cause, bench::upholding(walk.bench, FunctionId{f}), {}});
        }
    }
    add_ties_to_test(walk, disturbed, all);
    const bench::State whole = bench::assembled(walk.bench);
    for (Obligation& obligation : all)
        obligation.may_be_hidden =
            bench::hidden_in_whole(walk.bench, whole, obligation.must_be_back);
    return all;
}

// Where the test says how something stands that is not on the path itself, the author has decided.
bool all_back_at(const Walk& walk, std::size_t at, const Obligation& obligation,
                 const model::Step& test) {
    std::vector<ItemId> wanted = must_be_back(walk, obligation, test);
    std::erase_if(wanted, [&](ItemId item) {
        return !test.when.empty() && item != obligation.item && bench::says_where(test, item) &&
               !(obligation.function.known() &&
                 among(walk.model.functions[obligation.function.value].through, item));
    });
    return bench::all_back(walk.bench, walk.state_at(at), wanted);
}

// What the test proves of what the guide renews: all of it, when it names nothing.
std::vector<ItemId> renewed_for(const Walk& walk, const model::Step& test) {
    return test.proves.empty() ? renewed_items(walk) : std::vector<ItemId>{};
}

// What a test asks of the state in which it is done.
struct Demands {
    const model::Step& test;
    std::vector<ItemId> proven;
    std::vector<ItemId> sources;
    std::vector<ItemId> renewed;
    std::size_t not_before = 0; // what it makes hot is touched no more from this event on
};

std::size_t last_work_on(const Walk& walk, const std::vector<ItemId>& items) {
    for (std::size_t at = walk.events.size(); at-- > 0 && !items.empty();) {
        const auto& act = walk.events[at].act;
        if (act && std::any_of(items.begin(), items.end(), [&](ItemId item) {
                return bench::is_work_on(walk.bench, act->item,
                                         walk.model.kind_of(act->item).verbs[act->verb], item);
            }))
            return at + 1;
    }
    return 0;
}

Demands demands_of(const Walk& walk, const model::Step& test, std::vector<ItemId> sources) {
    auto renewed = renewed_for(walk, test);
    const auto hot =
        bench::hurt_on_touch(walk.bench, bench::brought_back_by(walk.bench, test, renewed));
    return {test, bench::proven_items(walk.bench, test), std::move(sources), std::move(renewed),
            last_work_on(walk, hot)};
}

// Could it be done here: ready, what it proves back, its sources on, no danger open, nor one that
// it brings about?
bool safe_at(const Walk& walk, std::size_t at, const Demands& demands) {
    const bench::State& state = walk.state_at(at);
    const auto none_open = [&] {
        bench::State run = state;
        bench::run(walk.bench, run, demands.test, demands.renewed);
        return !bench::within_reach(walk.bench, run, demands.test, walk.dangers);
    };
    return at >= demands.not_before && bench::conditions_hold(walk.bench, state, demands.test) &&
           bench::all_back(walk.bench, state, demands.proven) &&
           bench::all_restored(walk.bench, state, demands.sources) && none_open();
}

} // namespace

std::vector<ItemId> renewed_items(const Walk& walk) {
    std::vector<ItemId> items;
    for (const Event& event : walk.events) {
        const model::Action* action = walk.action(event);
        if (action == nullptr || action->sort != model::ActionSort::replace)
            continue;
        for (const auto& target : action->targets)
            items.push_back(target.ref.item);
    }
    return items;
}

std::vector<Proven> proofs(const Walk& walk) {
    std::vector<Proven> all;
    for (Obligation& obligation : obligations(walk))
        all.push_back({std::move(obligation), {}, {}});
    const Claims claims(walk.model, all);
    for (std::size_t i = 0; i < walk.events.size(); ++i) {
        if (walk.events[i].action)
            continue;
        for (const std::size_t claimed : claims.of(walk.step(walk.events[i]))) {
            Proven& proven = all[claimed];
            const model::Step& test = walk.step(walk.events[i]);
            if (i > proven.obligation.cause && all_back_at(walk, i, proven.obligation, test)) {
                proven.by = i;
            } else {
                proven.early = i;
            }
        }
    }
    return all;
}

bool could_be_done(const Walk& walk, std::size_t test, const Obligation& obligation,
                   std::size_t at) {
    // What closes it in may itself be needed for the test; and what is tried under power is tried
    // closed.
    const model::Step& step = walk.step(walk.events[test]);
    return all_back_at(walk, at, obligation, step) &&
           bench::conditions_hold(walk.bench, walk.state_at(at), step) &&
           safe_at(walk, at, demands_of(walk, step, sources_of_test(walk, test)));
}

std::optional<std::size_t> place_for(const Walk& walk, const std::vector<Obligation>& group,
                                     const Chances& chances) {
    model::Step test; // that says nothing of when
    std::size_t last_cause = 0;
    for (const Obligation& one : group) {
        model::Proof proof;
        proof.item = one.item;
        proof.function = one.function;
        test.proves.push_back(proof);
        last_cause = std::max(last_cause, one.cause);
    }
    const Demands demands = demands_of(walk, test, bench::test_sources(walk.bench, test, {}));
    for (auto stretch = chances.rbegin(); stretch != chances.rend(); ++stretch) {
        for (std::size_t at = stretch->to; at-- > stretch->from;) {
            if (safe_at(walk, at, demands))
                return at;
        }
    }
    for (std::size_t at = walk.events.size(); !demands.sources.empty() && at > last_cause; --at) {
        if (safe_at(walk, at, demands))
            return at;
    }
    return chances.empty() ? std::nullopt : std::optional(chances.back().to - 1);
}

std::vector<ItemId> sources_of_test(const Walk& walk, std::size_t test) {
    const model::Step& step = walk.step(walk.events[test]);
    return bench::test_sources(walk.bench, step, renewed_for(walk, step));
}

bool done_under(const Walk& walk, std::size_t test, ItemId item) {
    const auto sources = sources_of_test(walk, test);
    return std::any_of(sources.begin(), sources.end(), [&](ItemId source) {
        return source == item || among(walk.model.item(source).through, item);
    });
}

std::vector<ItemId> cut_sources(const Walk& walk, std::size_t test) {
    auto sources = sources_of_test(walk, test);
    std::erase_if(sources, [&](ItemId source) {
        const auto& through = walk.model.item(source).through;
        return bench::is_restored(walk.bench, walk.state_at(test), source) ||
               moved_by_walk(walk, source) ||
               std::any_of(through.begin(), through.end(),
                           [&](ItemId connector) { return moved_by_walk(walk, connector); });
    });
    return sources;
}

std::optional<bench::Exposure> open_under_power(const Walk& walk, const bench::State& state,
                                                const model::Step& test) {
    bench::State on = state;
    bench::run(walk.bench, on, test, renewed_for(walk, test), bench::Running::sources_alone);
    return bench::within_reach(walk.bench, on, test, walk.dangers);
}

std::vector<ItemId> run_test(const Walk& walk, bench::State& state, const model::Step& test) {
    const auto renewed = renewed_for(walk, test);
    auto brought_back = bench::brought_back_by(walk.bench, test, renewed);
    if (brought_back.empty() || open_under_power(walk, state, test))
        return {};
    bench::run(walk.bench, state, test, renewed);
    return brought_back;
}

bool told_not_ready(const Walk& walk, std::size_t test) {
    return std::any_of(walk.troubles.begin(), walk.troubles.end(), [&](const Trouble& trouble) {
        return trouble.event == test && std::holds_alternative<NotReady>(trouble.objection);
    });
}

std::vector<ItemId> not_back_at(const Walk& walk, std::size_t test) {
    const model::Step& step = walk.step(walk.events[test]);
    std::vector<ItemId> missing = bench::proven_items(walk.bench, step);
    std::erase_if(missing, [&](ItemId item) {
        return bench::says_where(step, item) || moved_by_walk(walk, item) ||
               bench::is_back(walk.bench, walk.state_at(test), item);
    });
    return missing;
}

std::string how_they_stand(const Walk& walk, std::size_t test, const std::vector<ItemId>& items) {
    std::string conditions;
    std::vector<ItemId> told;
    const bench::State& state = walk.state_at(test);
    const auto add = [&](ItemId item) {
        if (!walk.bench.exists(item) || bench::in_first_state(walk.bench, state, item) ||
            among(told, item))
            return;
        told.push_back(item);
        const model::StateId stands = bench::state_of(walk.bench, state, item, 0, 0);
        conditions +=
            fmt::format("{}{} {}", conditions.empty() ? "" : ", ", walk.model.item(item).name,
                        walk.model.kind_of(item).states[stands]);
    };
    for (const ItemId item : items) {
        for (const ItemId connector : walk.model.item(item).through)
            add(connector);
        add(item);
    }
    return conditions;
}

std::optional<std::size_t> better_point(const Walk& walk, std::size_t test) {
    return better_point(walk, test, walk.step(walk.events[test]));
}

std::optional<std::size_t> better_point(const Walk& walk, std::size_t test,
                                        const model::Step& said) {
    const Demands demands =
        demands_of(walk, said, bench::test_sources(walk.bench, said, renewed_for(walk, said)));
    for (std::size_t at = test + 1; at <= walk.events.size(); ++at) {
        if (safe_at(walk, at, demands))
            return at;
    }
    return std::nullopt;
}

std::vector<ItemId> must_be_back(const Walk& walk, const Obligation& obligation,
                                 const model::Step& test) {
    std::vector<ItemId> items = obligation.must_be_back;
    if (obligation.item.known()) {
        const auto plugs = bench::plugs_asked(walk.bench, test, obligation.item);
        items.insert(items.end(), plugs.begin(), plugs.end());
    }
    return items;
}

std::string name_of(const Walk& walk, const Obligation& obligation) {
    if (!obligation.function.known())
        return model::with_kind(walk.model, obligation.item);
    const auto& function = walk.model.functions[obligation.function.value];
    return (function.is_rating ? "the rating `" : "the function `") + function.name + "`";
}

} // namespace matchmark::check
