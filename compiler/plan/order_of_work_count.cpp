// Counts the orders in which a set of acts can be done, stage by stage.
#include "plan/order_of_work.hpp"

#include "plan/way_in/closure.hpp"

#include <algorithm>

namespace matchmark::plan {

namespace {

// A count of any size: nine decimal digits a place, the lowest first.
struct Count {
    std::vector<std::uint32_t> places;

    void operator+=(const Count& other) {
        constexpr std::uint32_t base = 1'000'000'000;
        std::uint32_t carry = 0;
        for (std::size_t i = 0; i < other.places.size() || carry != 0; ++i) {
            if (i == places.size())
                places.push_back(0);
            const std::uint32_t sum =
                places[i] + (i < other.places.size() ? other.places[i] : 0) + carry;
            carry = sum >= base ? 1 : 0;
            places[i] = sum - carry * base;
        }
    }
    [[nodiscard]] std::string text() const {
        std::string digits;
        for (auto place = places.rbegin(); place != places.rend(); ++place) {
            const std::string next = std::to_string(*place);
            digits += digits.empty() ? next : std::string(9 - next.size(), '0') + next;
        }
        return digits.empty() ? "0" : digits;
    }
};

} // namespace

std::string count_orders(const TaskGraph& graph, const std::vector<TaskIndex>& tasks,
                         std::size_t most_states) {
    const bench::Bench& on = *graph.bench;
    std::map<std::vector<model::StateId>, Count> layer;
    bench::State state = bench::assembled(on);
    layer[state.slots].places = {1};
    std::size_t looked_at = 1;
    for (std::size_t done = 0; done < tasks.size(); ++done) {
        std::map<std::vector<model::StateId>, Count> next;
        for (const auto& [slots, ways] : layer) {
            state.slots = slots;
            for (const TaskIndex task : tasks) {
                const std::uint32_t slot = graph.units[graph.tasks[task].unit].slot;
                if (slots[slot] != graph.tasks[task].from || !possible(graph, state, task))
                    continue;
                bench::State after = state;
                bench::perform(on, after, graph.tasks[task].act);
                next[std::move(after.slots)] += ways;
            }
        }
        looked_at += next.size();
        if (looked_at > most_states)
            return {};
        layer = std::move(next);
    }
    Count total;
    for (const auto& [slots, ways] : layer)
        total += ways;
    return total.text();
}

} // namespace matchmark::plan
