// Reduces the sets, splits them into groups that share no act, and branches on the smallest set.
#include "plan/way_in/cover.hpp"

#include <algorithm>
#include <numeric>

namespace matchmark::plan {

namespace {

using Weight = std::int64_t;
using Sets = std::vector<std::vector<TaskIndex>>;

bool within(const std::vector<TaskIndex>& small, const std::vector<TaskIndex>& large) {
    return std::includes(large.begin(), large.end(), small.begin(), small.end());
}

// A set that holds another is met with it. Of a smaller set within it, the first act is in it too.
void drop_supersets(Sets& sets, std::size_t task_count) {
    std::sort(sets.begin(), sets.end(), [](const auto& a, const auto& b) {
        return a.size() != b.size() ? a.size() < b.size() : a < b;
    });
    Sets kept;
    std::vector<std::vector<std::size_t>> starting(task_count); // sets kept, by their first act
    for (auto& set : sets) {
        const bool holds_one = std::any_of(set.begin(), set.end(), [&](TaskIndex task) {
            return std::any_of(starting[task].begin(), starting[task].end(),
                               [&](std::size_t small) { return within(kept[small], set); });
        });
        if (holds_one)
            continue;
        starting[set.front()].push_back(kept.size());
        kept.push_back(std::move(set));
    }
    sets = std::move(kept);
}

// An act is not needed when another meets all its sets and weighs no more. True if any went.
bool drop_dominated(Sets& sets, const std::vector<Task>& tasks) {
    std::vector<std::vector<std::uint32_t>> meets(tasks.size());
    for (std::uint32_t s = 0; s < sets.size(); ++s) {
        for (const TaskIndex task : sets[s])
            meets[task].push_back(s);
    }
    std::vector<bool> gone(tasks.size());
    bool any = false;
    for (TaskIndex task = 0; task < tasks.size(); ++task) {
        const auto& where = meets[task];
        if (where.empty())
            continue;
        for (const TaskIndex other : sets[where.front()]) {
            if (other == task || gone[other])
                continue;
            const Weight mine = tasks[task].weight;
            const Weight theirs = tasks[other].weight;
            const bool better = theirs < mine || (theirs == mine && other < task) ||
                                (theirs == mine && meets[other].size() > where.size());
            if (better && within(where, meets[other])) {
                gone[task] = any = true;
                break;
            }
        }
    }
    for (auto& set : sets)
        set.erase(
            std::remove_if(set.begin(), set.end(), [&](TaskIndex task) { return gone[task]; }),
            set.end());
    return any;
}

// Takes the acts that stand alone in a set, and gives the sets that none of them meets.
Sets take_forced(const std::vector<Task>& tasks, const TaskSets& sets, Cover& cover) {
    std::vector<bool> forced(tasks.size());
    for (std::size_t s = 0; s < sets.size(); ++s) {
        const auto set = sets[s];
        if (set.size() != 1 || forced[set.front()])
            continue;
        forced[set.front()] = true;
        cover.tasks.push_back(set.front());
        cover.weight += tasks[set.front()].weight;
    }
    Sets rest;
    for (std::size_t s = 0; s < sets.size(); ++s) {
        const auto set = sets[s];
        if (std::none_of(set.begin(), set.end(), [&](TaskIndex task) { return forced[task]; }))
            rest.emplace_back(set.begin(), set.end());
    }
    return rest;
}

// One group of sets that share acts with each other and with no other group.
class Group {
public:
    Group(const std::vector<Task>& tasks, const Sets& sets,
          const std::function<bool()>& out_of_time);

    // No choice weighs less.
    [[nodiscard]] Weight bound() { return still_to_pay(); }
    Cover solve(Weight lighter_than);

private:
    void choose(TaskIndex member, bool on);
    void exclude(TaskIndex member, bool on);
    std::vector<TaskIndex>& only_choices(std::size_t depth, Weight& paid);
    Weight still_to_pay();
    void branch(Weight paid, std::size_t depth);
    [[nodiscard]] std::size_t narrowest() const;
    void quickly();

    const std::function<bool()>& out_of_time_;
    Sets sets_; // of members, by their place in members_
    std::vector<TaskIndex> members_;
    std::vector<Weight> weights_;
    std::vector<std::vector<std::uint32_t>> sets_of_; // by member
    std::vector<std::uint32_t> met_;                  // by set: how many of it are chosen
    std::vector<std::uint32_t> left_;                 // by set: how many of it are not excluded
    std::vector<bool> chosen_;
    std::vector<bool> excluded_;
    std::vector<std::uint32_t> open_;                // room for still_to_pay
    std::vector<Weight> rest_;                       // the same
    std::vector<std::vector<TaskIndex>> forced_;     // room for each depth
    std::vector<std::vector<TaskIndex>> candidates_; // the same
    Weight best_ = std::numeric_limits<Weight>::max();
    std::vector<bool> best_chosen_;
    int steps_ = 0;
    bool stopped_ = false;
};

constexpr Weight never = std::numeric_limits<Weight>::max();

Group::Group(const std::vector<Task>& tasks, const Sets& sets,
             const std::function<bool()>& out_of_time)
    : out_of_time_(out_of_time), sets_(sets), met_(sets.size()) {
    for (const auto& set : sets_)
        members_.insert(members_.end(), set.begin(), set.end());
    std::sort(members_.begin(), members_.end());
    members_.erase(std::unique(members_.begin(), members_.end()), members_.end());
    sets_of_.resize(members_.size());
    for (std::uint32_t s = 0; s < sets_.size(); ++s) {
        for (TaskIndex& task : sets_[s]) {
            task = static_cast<TaskIndex>(std::lower_bound(members_.begin(), members_.end(), task) -
                                          members_.begin());
            sets_of_[task].push_back(s);
        }
        left_.push_back(static_cast<std::uint32_t>(sets_[s].size()));
    }
    for (const TaskIndex task : members_)
        weights_.push_back(tasks[task].weight);
    chosen_.resize(members_.size());
    excluded_.resize(members_.size());
    // Each level chooses one act at least.
    forced_.resize(members_.size() + 2);
    candidates_.resize(members_.size() + 2);
}

void Group::choose(TaskIndex member, bool on) {
    chosen_[member] = on;
    for (const std::uint32_t set : sets_of_[member])
        met_[set] += on ? 1U : ~0U;
}

void Group::exclude(TaskIndex member, bool on) {
    excluded_[member] = on;
    for (const std::uint32_t set : sets_of_[member])
        left_[set] += on ? ~0U : 1U;
}

// A lower bound: each set takes what is left of its cheapest act, and no act gives more than it
// weighs. The sets with the fewest candidates come first.
Weight Group::still_to_pay() {
    open_.clear();
    for (std::uint32_t s = 0; s < sets_.size(); ++s) {
        if (met_[s] == 0)
            open_.push_back(s);
    }
    std::sort(open_.begin(), open_.end(), [&](std::uint32_t a, std::uint32_t b) {
        return left_[a] != left_[b] ? left_[a] < left_[b] : a < b;
    });
    rest_ = weights_;
    Weight total = 0;
    for (const std::uint32_t s : open_) {
        Weight least = never;
        for (const TaskIndex task : sets_[s]) {
            if (!excluded_[task])
                least = std::min(least, rest_[task]);
        }
        if (least == never)
            return never;
        for (const TaskIndex task : sets_[s])
            rest_[task] -= excluded_[task] ? 0 : least;
        total += least;
    }
    return total;
}

// The open set with the fewest candidates; past the last one when none is open.
std::size_t Group::narrowest() const {
    std::size_t found = sets_.size();
    for (std::size_t s = 0; s < sets_.size(); ++s) {
        if (met_[s] == 0 && (found == sets_.size() || left_[s] < left_[found]))
            found = s;
    }
    return found;
}

// Chooses what alone is left in its set, and gives these acts.
std::vector<TaskIndex>& Group::only_choices(std::size_t depth, Weight& paid) {
    auto& forced = forced_[depth];
    forced.clear();
    for (std::size_t s = narrowest(); s < sets_.size() && left_[s] == 1; s = narrowest()) {
        const TaskIndex task = *std::find_if(sets_[s].begin(), sets_[s].end(),
                                             [&](TaskIndex one) { return !excluded_[one]; });
        choose(task, true);
        forced.push_back(task);
        paid += weights_[task];
    }
    return forced;
}

void Group::branch(Weight paid, std::size_t depth) {
    if (++steps_ % 256 == 0 && out_of_time_())
        stopped_ = true;
    const auto& forced = only_choices(depth, paid);
    const std::size_t next = narrowest();
    if (next == sets_.size() && paid < best_) {
        best_ = paid;
        best_chosen_ = chosen_;
    }
    const Weight rest = next == sets_.size() || left_[next] == 0 ? never : still_to_pay();
    if (rest != never && paid + rest < best_ && !stopped_) {
        auto& candidates = candidates_[depth];
        candidates.clear();
        for (const TaskIndex task : sets_[next]) {
            if (!excluded_[task])
                candidates.push_back(task);
        }
        std::sort(candidates.begin(), candidates.end(), [&](TaskIndex a, TaskIndex b) {
            return weights_[a] != weights_[b] ? weights_[a] < weights_[b] : a < b;
        });
        for (const TaskIndex task : candidates) {
            choose(task, true);
            branch(paid + weights_[task], depth + 1);
            choose(task, false);
            exclude(task, true);
        }
        for (const TaskIndex task : candidates)
            exclude(task, false);
    }
    for (const TaskIndex task : forced)
        choose(task, false);
}

// A first choice, set by set: what costs least for each open set that it meets.
void Group::quickly() {
    Weight paid = 0;
    for (std::size_t s = 0; s < sets_.size(); ++s) {
        if (met_[s] != 0)
            continue;
        const auto price = [&](TaskIndex task) {
            const auto meets = std::count_if(sets_of_[task].begin(), sets_of_[task].end(),
                                             [&](std::uint32_t set) { return met_[set] == 0; });
            return static_cast<double>(weights_[task]) / static_cast<double>(meets);
        };
        const TaskIndex best =
            *std::min_element(sets_[s].begin(), sets_[s].end(),
                              [&](TaskIndex a, TaskIndex b) { return price(a) < price(b); });
        choose(best, true);
        paid += weights_[best];
    }
    best_ = paid;
    best_chosen_ = chosen_;
    for (TaskIndex task = 0; task < members_.size(); ++task) {
        if (chosen_[task])
            choose(task, false);
    }
}

Cover Group::solve(Weight lighter_than) {
    const Weight root = still_to_pay();
    quickly();
    best_ = std::min(best_, lighter_than);
    if (root < best_)
        branch(0, 0);
    Cover cover;
    for (TaskIndex i = 0; i < members_.size(); ++i) {
        if (best_chosen_[i]) {
            cover.tasks.push_back(members_[i]);
            cover.weight += weights_[i];
        }
    }
    cover.at_least = stopped_ ? root : best_;
    return cover;
}

// The sets in groups that share no act.
std::vector<Sets> groups_of(const Sets& sets) {
    std::vector<std::size_t> parent(sets.size());
    std::iota(parent.begin(), parent.end(), std::size_t{0});
    const auto root = [&](std::size_t i) {
        while (parent[i] != i)
            i = parent[i] = parent[parent[i]];
        return i;
    };
    std::map<TaskIndex, std::size_t> first;
    for (std::size_t s = 0; s < sets.size(); ++s) {
        for (const TaskIndex task : sets[s])
            parent[root(s)] = root(first.emplace(task, s).first->second);
    }
    std::map<std::size_t, Sets> groups;
    for (std::size_t s = 0; s < sets.size(); ++s)
        groups[root(s)].push_back(sets[s]);
    std::vector<Sets> list;
    for (auto& [key, group] : groups)
        list.push_back(std::move(group));
    return list;
}

} // namespace

Cover quick_cover(const std::vector<Task>& tasks, const TaskSets& sets) {
    Cover cover;
    Sets open = take_forced(tasks, sets, cover);
    std::vector<std::uint32_t> meets(tasks.size()); // of the sets still open
    for (const auto& set : open) {
        for (const TaskIndex task : set)
            ++meets[task];
    }
    for (std::size_t s = 0; s < open.size(); ++s) {
        if (open[s].empty())
            continue;
        const auto price = [&](TaskIndex task) {
            return static_cast<double>(tasks[task].weight) / static_cast<double>(meets[task]);
        };
        const TaskIndex best =
            *std::min_element(open[s].begin(), open[s].end(),
                              [&](TaskIndex a, TaskIndex b) { return price(a) < price(b); });
        cover.tasks.push_back(best);
        cover.weight += tasks[best].weight;
        for (std::size_t o = s; o < open.size(); ++o) {
            if (!std::binary_search(open[o].begin(), open[o].end(), best))
                continue;
            for (const TaskIndex task : open[o])
                --meets[task];
            open[o].clear();
        }
    }
    std::sort(cover.tasks.begin(), cover.tasks.end());
    return cover;
}

Cover least_cover(const std::vector<Task>& tasks, const TaskSets& sets,
                  const std::function<bool()>& out_of_time, Weight lighter_than) {
    Cover cover;
    Sets reduced = take_forced(tasks, sets, cover);
    do {
        drop_supersets(reduced, tasks.size());
    } while (drop_dominated(reduced, tasks));
    std::vector<Group> groups;
    for (const Sets& group : groups_of(reduced))
        groups.emplace_back(tasks, group, out_of_time);
    std::vector<Weight> bounds;
    cover.at_least = cover.weight;
    for (Group& group : groups) {
        bounds.push_back(group.bound());
        cover.at_least += bounds.back();
    }
    for (std::size_t g = 0; g < groups.size() && cover.at_least < lighter_than; ++g) {
        const Weight others = cover.at_least - bounds[g];
        const Cover part = groups[g].solve(lighter_than == never ? never : lighter_than - others);
        cover.tasks.insert(cover.tasks.end(), part.tasks.begin(), part.tasks.end());
        cover.weight += part.weight;
        cover.at_least = others + part.at_least;
    }
    std::sort(cover.tasks.begin(), cover.tasks.end());
    return cover;
}

} // namespace matchmark::plan
