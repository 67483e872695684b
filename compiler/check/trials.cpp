// Matches what the work obliges one to prove with the tests that prove it.
#include "check/trials.hpp"

#include "model/describe.hpp"

#include <algorithm>

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

// The last event that disturbs each item; none: nothing does.
std::vector<std::optional<std::size_t>> last_disturbances(const Walk& walk) {
    std::vector<std::optional<std::size_t>> last(walk.model.items.size());
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
            cause = std::max(cause, disturbed[item.value]);
        if (cause) {
            all.push_back(
                {{}, FunctionId{f}, *cause, bench::upholding(walk.bench, FunctionId{f}), {}});
        }
    }
    const bench::State whole = bench::assembled(walk.bench);
    for (Obligation& obligation : all)
        obligation.may_be_hidden =
            bench::hidden_in_whole(walk.bench, whole, obligation.must_be_back);
    return all;
}

bool claims(const Walk& walk, const model::Step& test, const Obligation& obligation) {
    return obligation.function.known()
               ? bench::proves_function(walk.model, test, obligation.function)
               : bench::proves_item(walk.model, test, obligation.item);
}

bool all_back_at(const Walk& walk, std::size_t at, const Obligation& obligation) {
    return bench::all_back(walk.bench, walk.state_at(at), obligation.must_be_back);
}

bool hidden_at(const Walk& walk, std::size_t at, const Obligation& obligation) {
    return bench::any_hidden(walk.bench, walk.state_at(at), obligation.may_be_hidden);
}

} // namespace

std::vector<Proven> proofs(const Walk& walk) {
    std::vector<std::size_t> tests;
    for (std::size_t i = 0; i < walk.events.size(); ++i) {
        if (!walk.events[i].action)
            tests.push_back(i);
    }
    std::vector<Proven> all;
    for (const Obligation& obligation : obligations(walk)) {
        Proven proven{obligation, {}, {}};
        for (const std::size_t i : tests) {
            if (!claims(walk, walk.step(walk.events[i]), obligation))
                continue;
            if (i > obligation.cause && all_back_at(walk, i, obligation)) {
                proven.by = i;
            } else {
                proven.early = i;
            }
        }
        all.push_back(std::move(proven));
    }
    return all;
}

std::vector<std::size_t> chances_for(const Walk& walk, const Obligation& obligation) {
    std::vector<std::size_t> open;
    std::vector<std::size_t> hidden;
    for (std::size_t at = obligation.cause + 1; at <= walk.events.size(); ++at) {
        if (!all_back_at(walk, at, obligation))
            continue;
        (hidden_at(walk, at, obligation) ? hidden : open).push_back(at);
    }
    return open.empty() ? hidden : open;
}

std::optional<std::size_t> hidden_since(const Walk& walk, std::size_t test,
                                        const Obligation& obligation) {
    if (!hidden_at(walk, test, obligation))
        return std::nullopt;
    const model::Step& step = walk.step(walk.events[test]);
    for (std::size_t at = test; at-- > obligation.cause + 1;) {
        if (hidden_at(walk, at, obligation))
            continue;
        // What closes it in may itself be needed for the test.
        const auto proven = bench::proven_items(walk.bench, step);
        const bool could = all_back_at(walk, at, obligation) &&
                           bench::all_back(walk.bench, walk.state_at(at), proven) &&
                           bench::conditions_hold(walk.bench, walk.state_at(at), step);
        return could ? std::optional(at) : std::nullopt;
    }
    return std::nullopt;
}

std::string name_of(const Walk& walk, const Obligation& obligation) {
    if (!obligation.function.known())
        return model::with_kind(walk.model, obligation.item);
    const auto& function = walk.model.functions[obligation.function.value];
    return (function.is_rating ? "the rating `" : "the function `") + function.name + "`";
}

} // namespace matchmark::check
