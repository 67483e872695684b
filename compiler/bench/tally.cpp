// Keeps the answers to many questions while acts change the state.
#include "bench/tally.hpp"

#include "bench/dangerous.hpp"
#include "bench/proof.hpp"
#include "bench/recharge.hpp"
#include "bench/trial_power.hpp"

#include <algorithm>
#include <utility>

namespace matchmark::bench {

Question asks_condition(const Bench& bench, const model::Condition& condition) {
    return {[&bench, &condition](const State& state) { return holds(bench, state, condition); },
            {condition.item.item}};
}

Question asks_back(const Bench& bench, ItemId item) {
    return {[&bench, item](const State& state) { return is_back(bench, state, item); }, {item}};
}

Question asks_reachable(const Bench& bench, ItemId item) {
    return {[&bench, item](const State& state) { return reachable(bench, state, item); },
            reach_depends_on(*bench.model, item)};
}

namespace {

std::vector<ItemId> source_and_way(const Bench& bench, ItemId source) {
    std::vector<ItemId> way = bench.model->item(source).through;
    way.push_back(source);
    return way;
}

} // namespace

Question asks_restored(const Bench& bench, ItemId source) {
    return {[&bench, source](const State& state) { return is_restored(bench, state, source); },
            source_and_way(bench, source)};
}

Question asks_dead(const Bench& bench, ItemId source) {
    return {[&bench, source](const State& state) { return !is_live(bench, state, source); },
            source_and_way(bench, source)};
}

namespace {

std::vector<ItemId> laid_bare_depends_on(const Bench& bench, ItemId danger) {
    std::vector<ItemId> items;
    const auto add = [&](const std::vector<ItemId>& more) {
        items.insert(items.end(), more.begin(), more.end());
    };
    const auto add_covers_of = [&](ItemId item) {
        add(reach_depends_on(*bench.model, item));
        for (const model::ReachClause& clause : bench.model->item(item).reach) {
            for (const auto& way : clause.ways) {
                for (const model::ItemRef& cover : way)
                    add(holders_of(bench, cover.item));
            }
        }
    };
    add_covers_of(danger);
    for (const ItemId fed : bench.model->item(danger).feeds)
        add_covers_of(fed);
    for (const ItemId end : bench.model->item(danger).feeding->bare_ends)
        add_covers_of(end);
    return items;
}

} // namespace

Question asks_kept_off(const Bench& bench, const State& start, ItemId danger) {
    return {[&bench, &start, danger](const State& state) {
                return !is_dangerous(bench, state, danger) ||
                       !open_in_trial(bench, start, state, danger);
            },
            laid_bare_depends_on(bench, danger)};
}

Question asks_kept_off_when_run(const Bench& bench, const State& start, ItemId danger,
                                const std::vector<ItemId>& sources) {
    std::vector<ItemId> items = laid_bare_depends_on(bench, danger);
    for (const ItemId source : sources) {
        const auto& through = bench.model->item(source).through;
        items.push_back(source);
        items.insert(items.end(), through.begin(), through.end());
    }
    return {[&bench, &start, danger, sources](const State& state) {
                if (!sources.empty() &&
                    std::none_of(sources.begin(), sources.end(),
                                 [&](ItemId source) { return is_live(bench, state, source); }))
                    return true;
                State run = state;
                charge(bench, run, danger, Charged::by_its_supply);
                return !open_in_trial(bench, start, run, danger);
            },
            std::move(items)};
}

std::size_t Tally::add_list() {
    not_so_.push_back(0);
    return not_so_.size() - 1;
}

void Tally::add(std::size_t list, Question question) {
    auto& items = question.decided_by;
    std::sort(items.begin(), items.end());
    items.erase(std::unique(items.begin(), items.end()), items.end());
    for (const ItemId item : items)
        asked_of_[item.value].push_back(questions_.size());
    questions_.push_back({std::move(question.so), list});
}

void Tally::start(const State& state) {
    std::fill(not_so_.begin(), not_so_.end(), 0);
    for (Asked& question : questions_) {
        question.answer = question.so(state);
        if (!question.answer)
            ++not_so_[question.list];
    }
}

std::vector<std::size_t> Tally::changed(const State& state, const std::vector<ItemId>& items) {
    std::vector<std::pair<std::size_t, bool>> before; // each list that is asked of, as it was
    for (const ItemId item : items) {
        for (const std::size_t index : asked_of_[item.value]) {
            Asked& question = questions_[index];
            const bool answer = question.so(state);
            if (answer == question.answer)
                continue;
            before.emplace_back(question.list, all_so(question.list));
            question.answer = answer;
            if (answer)
                --not_so_[question.list];
            else
                ++not_so_[question.list];
        }
    }
    // The first note of a list says how it was before all of this.
    std::stable_sort(before.begin(), before.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    const auto last = std::unique(before.begin(), before.end(),
                                  [](const auto& a, const auto& b) { return a.first == b.first; });
    std::vector<std::size_t> turned;
    for (auto note = before.begin(); note != last; ++note) {
        if (all_so(note->first) != note->second)
            turned.push_back(note->first);
    }
    return turned;
}

} // namespace matchmark::bench
