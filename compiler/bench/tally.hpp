// Many questions about the state, counted: after an act only those are asked again whose answer it
// may have changed.
//
// Whoever goes through a procedure for many tests at once holds a tally, for as long as that takes.
#pragma once

#include "bench/bench.hpp"

#include <functional>
#include <vector>

namespace matchmark::bench {

// Something that is so or not so in a state, and the items whose states decide it.
struct Question {
    std::function<bool(const State&)> so;
    std::vector<ItemId> decided_by;
};

// The bench has to outlive the question, and so do the references.
Question asks_condition(const Bench& bench, const model::Condition& condition);
Question asks_back(const Bench& bench, ItemId item);      // as `all_back`
Question asks_reachable(const Bench& bench, ItemId item); // as `reachable`
Question asks_restored(const Bench& bench, ItemId source);
Question asks_dead(const Bench& bench, ItemId source);
// Is the danger made safe, or out of reach? As `within_reach`; `start` is the device as assembled.
Question asks_kept_off(const Bench& bench, const State& start, ItemId danger);

// The same, were the danger not made safe: what a test brings back that runs the device when one of
// these sources is live, or needs none.
Question asks_kept_off_when_run(const Bench& bench, const State& start, ItemId danger,
                                const std::vector<ItemId>& sources);

// The items whose states decide whether this one can be reached.
std::vector<ItemId> reach_depends_on(const Model& model, ItemId item);

class Tally {
public:
    explicit Tally(const Model& model) : asked_of_(model.items.size()) {}

    // A list of questions, empty at first.
    std::size_t add_list();
    [[nodiscard]] std::size_t list_count() const { return not_so_.size(); }
    void add(std::size_t list, Question question);

    // Asks all of them.
    void start(const State& state);
    // Asks again what may be otherwise since these items changed; gives the lists that were all so
    // and are not, or the other way round, each once, in order.
    std::vector<std::size_t> changed(const State& state, const std::vector<ItemId>& items);

    [[nodiscard]] bool all_so(std::size_t list) const { return not_so_[list] == 0; }

private:
    struct Asked {
        std::function<bool(const State&)> so;
        std::size_t list = 0;
        bool answer = true;
    };
    std::vector<Asked> questions_;
    std::vector<std::vector<std::size_t>> asked_of_; // for each item, the questions it decides
    std::vector<std::size_t> not_so_;                // for each list, how many of its questions
};

} // namespace matchmark::bench
