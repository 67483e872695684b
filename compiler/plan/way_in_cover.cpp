// Reduces the sets, splits them into groups that share no act, and branches on the smallest set.
#include "plan/way_in_cover.hpp"

#include <algorithm>
#include <limits>
#include <numeric>

namespace matchmark::plan {

namespace {

using Weight = std::int64_t;

bool within(const std::vector<TaskIndex>& small, const std::vector<TaskIndex>& large) {
    return std::includes(large.begin(), large.end(), small.begin(), small.end());
}

// A set that holds another is met with it.
void drop_supersets(TaskSets& sets) {
    std::sort(sets.begin(), sets.end(), [](const auto& a, const auto& b) {
        return a.size() != b.size() ? a.size() < b.size() : a < b;
    });
    TaskSets kept;
    for (auto& set : sets) {
        if (std::none_of(kept.begin(), kept.end(),
                         [&](const auto& small) { return within(small, set); }))
            kept.push_back(std::move(set));
    }
    sets = std::move(kept);
}

// An act is not needed when another meets all its sets and weighs no more. True if any went.
bool drop_dominated(TaskSets& sets, const std::vector<Task>& tasks) {
    std::map<TaskIndex, std::vector<TaskIndex>> meets;
    for (std::uint32_t s = 0; s < sets.size(); ++s) {
        for (const TaskIndex task : sets[s])
            meets[task].push_back(s);
    }
    std::vector<TaskIndex> gone;
    const auto is_gone = [&](TaskIndex task) {
        return std::find(gone.begin(), gone.end(), task) != gone.end();
    };
    for (const auto& [task, where] : meets) {
        for (const TaskIndex other : sets[where.front()]) {
            if (other == task || is_gone(other))
                continue;
            const Weight mine = tasks[task].weight;
            const Weight theirs = tasks[other].weight;
            const bool better = theirs < mine || (theirs == mine && other < task) ||
                                (theirs == mine && meets[other].size() > where.size());
            if (better && within(where, meets[other])) {
                gone.push_back(task);
                break;
            }
        }
    }
    for (auto& set : sets)
        set.erase(std::remove_if(set.begin(), set.end(), is_gone), set.end());
    return !gone.empty();
}

// One group of sets that share acts with each other and with no other group.
class Group {
public:
    Group(const std::vector<Task>& tasks, TaskSets sets, const std::function<bool()>& out_of_time)
        : tasks_(tasks), sets_(std::move(sets)), out_of_time_(out_of_time) {
        for (const auto& set : sets_)
            members_.insert(members_.end(), set.begin(), set.end());
        std::sort(members_.begin(), members_.end());
        members_.erase(std::unique(members_.begin(), members_.end()), members_.end());
        for (auto& set : sets_) {
            for (TaskIndex& task : set)
                task = static_cast<TaskIndex>(
                    std::lower_bound(members_.begin(), members_.end(), task) - members_.begin());
        }
        chosen_.resize(members_.size());
        excluded_.resize(members_.size());
    }

    Cover solve();

private:
    struct Open {
        std::vector<TaskIndex> candidates;
    };
    [[nodiscard]] Weight weight(TaskIndex member) const { return tasks_[members_[member]].weight; }
    [[nodiscard]] std::vector<Open> open_sets() const;
    [[nodiscard]] Weight still_to_pay(const std::vector<Open>& open) const;
    void branch(Weight paid);

    const std::vector<Task>& tasks_;
    TaskSets sets_;
    const std::function<bool()>& out_of_time_;
    std::vector<TaskIndex> members_;
    std::vector<bool> chosen_;
    std::vector<bool> excluded_;
    Weight best_ = std::numeric_limits<Weight>::max();
    std::vector<bool> best_chosen_;
    int steps_ = 0;
    bool stopped_ = false;
};

// The sets that nothing chosen meets, those with the fewest candidates first.
std::vector<Group::Open> Group::open_sets() const {
    std::vector<Open> open;
    for (const auto& set : sets_) {
        if (std::any_of(set.begin(), set.end(), [&](TaskIndex t) { return chosen_[t]; }))
            continue;
        Open entry;
        for (const TaskIndex task : set) {
            if (!excluded_[task])
                entry.candidates.push_back(task);
        }
        open.push_back(std::move(entry));
    }
    std::stable_sort(open.begin(), open.end(), [](const Open& a, const Open& b) {
        return a.candidates.size() < b.candidates.size();
    });
    return open;
}

// A lower bound: each set takes what is left of its cheapest act, and no act gives more than it
// weighs.
Weight Group::still_to_pay(const std::vector<Open>& open) const {
    std::vector<Weight> left(members_.size());
    for (TaskIndex i = 0; i < left.size(); ++i)
        left[i] = weight(i);
    Weight total = 0;
    for (const Open& set : open) {
        Weight least = std::numeric_limits<Weight>::max();
        for (const TaskIndex task : set.candidates)
            least = std::min(least, left[task]);
        if (least == std::numeric_limits<Weight>::max())
            return least;
        for (const TaskIndex task : set.candidates)
            left[task] -= least;
        total += least;
    }
    return total;
}

void Group::branch(Weight paid) {
    if (++steps_ % 256 == 0 && out_of_time_())
        stopped_ = true;
    const auto open = open_sets();
    if (open.empty()) {
        if (paid < best_) {
            best_ = paid;
            best_chosen_ = chosen_;
        }
        return;
    }
    const Weight rest = still_to_pay(open);
    if (stopped_ || rest == std::numeric_limits<Weight>::max() || paid + rest >= best_)
        return;
    auto candidates = open.front().candidates;
    std::stable_sort(candidates.begin(), candidates.end(),
                     [&](TaskIndex a, TaskIndex b) { return weight(a) < weight(b); });
    for (const TaskIndex task : candidates) {
        chosen_[task] = true;
        branch(paid + weight(task));
        chosen_[task] = false;
        excluded_[task] = true;
    }
    for (const TaskIndex task : candidates)
        excluded_[task] = false;
}

Cover Group::solve() {
    TaskSets named = sets_;
    for (auto& set : named) {
        for (TaskIndex& task : set)
            task = members_[task];
    }
    const Cover quick = quick_cover(tasks_, named);
    best_ = quick.weight + 1;
    const Weight root = still_to_pay(open_sets());
    branch(0);
    Cover cover = quick;
    if (best_ <= quick.weight) {
        cover.tasks.clear();
        for (TaskIndex i = 0; i < members_.size(); ++i) {
            if (best_chosen_[i])
                cover.tasks.push_back(members_[i]);
        }
        cover.weight = best_;
    }
    cover.at_least = stopped_ ? root : cover.weight;
    return cover;
}

// The sets in groups that share no act.
std::vector<TaskSets> groups_of(const TaskSets& sets) {
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
    std::map<std::size_t, TaskSets> groups;
    for (std::size_t s = 0; s < sets.size(); ++s)
        groups[root(s)].push_back(sets[s]);
    std::vector<TaskSets> list;
    for (auto& [key, group] : groups)
        list.push_back(std::move(group));
    return list;
}

} // namespace

Cover quick_cover(const std::vector<Task>& tasks, const TaskSets& sets) {
    Cover cover;
    std::vector<bool> met(sets.size());
    for (std::size_t s = 0; s < sets.size(); ++s) {
        if (met[s])
            continue;
        TaskIndex best = sets[s].front();
        double best_price = std::numeric_limits<double>::max();
        for (const TaskIndex task : sets[s]) {
            std::size_t others = 0;
            for (std::size_t o = s; o < sets.size(); ++o)
                others += !met[o] && std::binary_search(sets[o].begin(), sets[o].end(), task);
            const double price =
                static_cast<double>(tasks[task].weight) / static_cast<double>(others);
            if (price < best_price) {
                best = task;
                best_price = price;
            }
        }
        cover.tasks.push_back(best);
        cover.weight += tasks[best].weight;
        for (std::size_t o = s; o < sets.size(); ++o)
            met[o] = met[o] || std::binary_search(sets[o].begin(), sets[o].end(), best);
    }
    std::sort(cover.tasks.begin(), cover.tasks.end());
    return cover;
}

Cover least_cover(const std::vector<Task>& tasks, const TaskSets& sets,
                  const std::function<bool()>& out_of_time) {
    TaskSets reduced = sets;
    do {
        drop_supersets(reduced);
    } while (drop_dominated(reduced, tasks));
    Cover cover;
    for (TaskSets& group : groups_of(reduced)) {
        const Cover part = Group(tasks, std::move(group), out_of_time).solve();
        cover.tasks.insert(cover.tasks.end(), part.tasks.begin(), part.tasks.end());
        cover.weight += part.weight;
        cover.at_least += part.at_least;
    }
    std::sort(cover.tasks.begin(), cover.tasks.end());
    return cover;
}

} // namespace matchmark::plan
