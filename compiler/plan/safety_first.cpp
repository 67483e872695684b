// Sources are cut off before anything is opened, and before what they drove is waited for: OSHA
// 29 CFR 1910.147(d), isolation before stored energy.
#include "plan/safety_first.hpp"

#include "bench/exposure.hpp"

#include <algorithm>
#include <set>

namespace matchmark::plan {

namespace {

struct Doing {
    TaskIndex task = 0;
    std::string tool;
};

std::size_t times_taken_up(const std::vector<Doing>& all) {
    std::size_t times = 0;
    std::string in_hand;
    for (const Doing& one : all) {
        if (!one.tool.empty() && one.tool != in_hand) {
            in_hand = one.tool;
            ++times;
        }
    }
    return times;
}

class Hoisting {
public:
    explicit Hoisting(const TaskGraph& graph)
        : graph_(graph), state_(bench::assembled(*graph.bench)) {}

    // False when what is left cannot be done in its order.
    bool run(std::vector<Doing> left) {
        // What is done to a thing after it was waited for stays after that.
        std::set<model::ItemId> passing;
        for (const Doing& one : left) {
            if (verb_of(one).waits)
                passing.insert(item_of(one));
        }
        // A supply is cut, what it made hot or set going is waited for, and only then it is proved
        // dead (29 CFR 1910.147(d)(5) and (6)) and a pressure let out: what is hot under pressure
        // boils when it is opened (common practice, no source), and what a pump presses is back
        // while the pump may run.
        take(left, [&](const Doing& one) {
            return verb_of(one).from_outside && !passing.contains(item_of(one)) && feeds(one) &&
                   !proves_dead(one) && !comes_of_running(one);
        });
        take(left, [&](const Doing& one) {
            return verb_of(one).from_outside && passing.contains(item_of(one));
        });
        take(left, [&](const Doing& one) {
            return verb_of(one).from_outside && !waits_for_terminals(one);
        });
        const auto waits = std::stable_partition(
            left.begin(), left.end(), [&](const Doing& one) { return !waits_for_terminals(one); });
        put_off_.assign(waits, left.end());
        left.erase(waits, left.end());
        return std::all_of(left.begin(), left.end(),
                           [&](const Doing& one) { return done_in_turn(one); }) &&
               prove_what_is_put_off();
    }

    [[nodiscard]] const std::vector<Doing>& order() const { return order_; }

private:
    [[nodiscard]] model::ItemId item_of(const Doing& one) const {
        return graph_.units[graph_.tasks[one.task].unit].item;
    }
    [[nodiscard]] bool feeds(const Doing& one) const {
        return !graph_.bench->model->item(item_of(one)).feeds.empty();
    }
    [[nodiscard]] bool comes_of_running(const Doing& one) const {
        return graph_.bench->model->kind_of(item_of(one)).moves;
    }
    [[nodiscard]] const model::Verb& verb_of(const Doing& one) const {
        return graph_.bench->model->kind_of(item_of(one)).verbs[graph_.tasks[one.task].verb];
    }

    // Is the supply cut before it, and safe in all ways only by it?
    [[nodiscard]] bool proves_dead(const Doing& one) const {
        const model::Kind& kind = graph_.bench->model->kind_of(item_of(one));
        const model::Verb& verb = verb_of(one);
        const auto safe_in = [&](const model::HazardUse& use) {
            return model::contains(use.safe, verb.to);
        };
        return (verb.from & kind.live) == 0 &&
               std::all_of(kind.hazards.begin(), kind.hazards.end(), safe_in) &&
               std::any_of(kind.hazards.begin(), kind.hazards.end(),
                           [&](const auto& use) { return (verb.from & use.safe) == 0; });
    }

    // Does only work on what the supply feeds ask for it, and is all of that still covered? It is
    // proved dead at the terminals where the work is (EN 50110-1, 6.2.4, from memory).
    [[nodiscard]] bool waits_for_terminals(const Doing& one) const {
        const bench::Bench& bench = *graph_.bench;
        const model::Item& item = bench.model->item(item_of(one));
        const auto& hazards = bench.model->kind(item.kind).hazards;
        const model::StateId from = graph_.tasks[one.task].from;
        const bool opens = std::any_of(hazards.begin(), hazards.end(), [&](const auto& use) {
            return use.on_reach && !model::contains(use.safe, from);
        });
        const auto& terminals =
            item.feeding->bare_ends.empty() ? item.feeds : item.feeding->bare_ends;
        return bench::is_met_by_what_it_feeds(item) && proves_dead(one) && !opens &&
               std::none_of(terminals.begin(), terminals.end(), [&](model::ItemId terminal) {
                   return bench.exists(terminal) && bench::reachable(bench, state_, terminal);
               });
    }

    // What waits for the terminals is done once they lie open, or where the work asks for it first.
    bool done_in_turn(const Doing& one) {
        take(put_off_, [&](const Doing& other) { return !waits_for_terminals(other); });
        return did(one) || (!put_off_.empty() && prove_what_is_put_off() && did(one));
    }

    bool prove_what_is_put_off() {
        take(put_off_, [](const Doing&) { return true; });
        return put_off_.empty();
    }

    bool did(const Doing& one) {
        const Task& what = graph_.tasks[one.task];
        if (state_.slots[graph_.units[what.unit].slot] != what.from ||
            !possible(graph_, state_, one.task))
            return false;
        bench::perform(*graph_.bench, state_, what.act);
        order_.push_back(one);
        return true;
    }

    // Those that can be done now, in their order; again from the first after each.
    template <class Wanted> void take(std::vector<Doing>& left, Wanted wanted) {
        for (auto next = left.begin(); next != left.end();) {
            if (wanted(*next) && did(*next)) {
                left.erase(next);
                next = left.begin();
            } else {
                ++next;
            }
        }
    }

    const TaskGraph& graph_;
    bench::State state_;
    std::vector<Doing> order_;
    std::vector<Doing> put_off_;
};

} // namespace

void put_safety_first(const TaskGraph& graph, WorkOrder& work, bool at_no_cost) {
    std::vector<Doing> all;
    for (std::size_t i = 0; i < work.order.size(); ++i)
        all.push_back({work.order[i], work.tools[i]});
    Hoisting hoisting(graph);
    if (!hoisting.run(all) ||
        (at_no_cost && times_taken_up(hoisting.order()) > times_taken_up(all)))
        return;
    for (std::size_t i = 0; i < work.order.size(); ++i) {
        work.order[i] = hoisting.order()[i].task;
        work.tools[i] = hoisting.order()[i].tool;
    }
}

} // namespace matchmark::plan
