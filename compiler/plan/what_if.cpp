// Plans each part once, and again only where a relation carries part of the proof.
#include "plan/what_if.hpp"

#include "plan/way_in/least.hpp"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <functional>
#include <memory>
#include <thread>

namespace matchmark::plan {

using model::ItemId;
using model::Model;

namespace {

// The least way in to one part, with or without a relation.
struct Cell {
    Proof proof = Proof::unknown;
    bool same = true;
    bool planned = false;
    std::int64_t weight = 0;
    std::size_t acts = 0;
};

double seconds_of_change(std::int64_t weight) {
    const std::int64_t milliseconds = milliseconds_of(weight);
    return static_cast<double>(milliseconds) / 1000;
}

// What it takes to loosen the tie: of each unit the lightest way, state by state outwards.
std::int64_t weight_of_loosening(const TaskGraph& graph, ItemId tie) {
    const model::Kind& kind = graph.bench->model->kind_of(tie);
    constexpr std::int64_t never = std::int64_t{1} << 60U;
    std::int64_t total = 0;
    for (const std::uint32_t unit : graph.units_of[tie.value]) {
        if (graph.units[unit].set != 0)
            continue;
        std::vector<std::int64_t> least(kind.states.size(), never);
        least[kind.set_first.front()] = 0;
        std::int64_t loose = never;
        for (std::size_t s = 0; s < kind.states.size(); ++s) {
            const auto state = static_cast<model::StateId>(s);
            if (kind.set_of[state] == 0 && !model::contains(kind.binds, state))
                loose = std::min(loose, least[state]);
            for (const TaskIndex task : graph.tasks_of[unit]) {
                const Task& what = graph.tasks[task];
                if (what.from == state)
                    least[what.to] = std::min(least[what.to], least[state] + what.weight);
            }
        }
        total += loose >= never ? 0 : loose;
    }
    return total;
}

// One act that takes so many members' share of the time.
std::int64_t share_of(std::int64_t weight, std::size_t members, std::size_t of_all) {
    constexpr std::int64_t millisecond = weight_of_second / 1000;
    const std::int64_t milliseconds = milliseconds_of(weight);
    const double share = static_cast<double>(milliseconds) * static_cast<double>(members) /
                         static_cast<double>(of_all);
    return std::llround(share) * millisecond + weight_of_act;
}

// A device of its own, from which relations are taken away and to which they are given back.
class Copy {
public:
    Copy(const bench::Bench& bench, const std::vector<WayInGoal>& goals,
         const std::vector<Relation>& relations)
        : model_(*bench.model), on_{&model_, bench.variant}, goals_(goals), relations_(relations),
          graph_(task_graph(on_, goals_, relations_, goal_nodes_)), risks_(risks_of(graph_)) {}
    Copy(const Copy&) = delete;
    Copy& operator=(const Copy&) = delete;

    // The part as the device is, and without each of the relations that only loosen.
    Cell plan_part(std::size_t part, const std::vector<bool>& loosens, std::vector<Cell>& row);
    // All parts without the relation.
    void plan_without(RelationIndex relation, const std::vector<Cell>& now,
                      std::vector<std::vector<Cell>>& rows);

private:
    Cell without(RelationIndex relation, std::size_t part, const Least& now);

    Model model_;
    bench::Bench on_;
    const std::vector<WayInGoal>& goals_;
    const std::vector<Relation>& relations_;
    std::vector<NodeIndex> goal_nodes_;
    TaskGraph graph_;
    Risks risks_;
};

// Takes a relation away as long as it lives.
class LeftOut {
public:
    LeftOut(Model& model, const Relation& relation)
        : model_(model), relation_(relation), item_(model.item(relation.item)),
          other_(model.item(relation.other)), kinds_(model.kinds.size()) {
        leave_out(model, relation);
    }
    LeftOut(const LeftOut&) = delete;
    LeftOut& operator=(const LeftOut&) = delete;
    ~LeftOut() {
        model_.items.edit(relation_.other.value) = std::move(other_);
        model_.items.edit(relation_.item.value) = std::move(item_);
        if (model_.kinds.size() != kinds_)
            model_.kinds.edit().resize(kinds_);
    }

private:
    Model& model_;
    const Relation& relation_;
    model::Item item_;
    model::Item other_;
    std::size_t kinds_;
};

Cell cell_of(const Least& least) {
    return {least.proof, false, true, least.weight, least.order.size()};
}

Cell Copy::plan_part(std::size_t part, const std::vector<bool>& loosens, std::vector<Cell>& row) {
    graph_.goal = goal_nodes_[part];
    const Least now = LeastWay(graph_, risks_, goals_[part]).find({});
    std::vector<bool> carries(relations_.size()); // part of the proof rests on it
    for (const Cut& set : now.sets) {
        if (now.proof == Proof::impossible && !set.tasks.empty())
            continue; // the last one alone says that there is no way
        for (const RelationIndex relation : set.rests_on)
            carries[relation] = true;
    }
    for (RelationIndex relation = 0; relation < relations_.size(); ++relation) {
        if (!loosens[relation])
            continue;
        if (now.proof != Proof::least && now.proof != Proof::impossible) {
            row[relation].same = false;
        } else if (carries[relation]) {
            row[relation] = without(relation, part, now);
        }
    }
    return cell_of(now);
}

// Sets that do not rest on the relation hold without it, and the way in as it is can still be done.
Cell Copy::without(RelationIndex relation, std::size_t part, const Least& now) {
    TaskSets known;
    for (const Cut& set : now.sets) {
        if (!set.tasks.empty() &&
            !std::binary_search(set.rests_on.begin(), set.rests_on.end(), relation))
            known.add(set.tasks);
    }
    LeastLimits limits;
    if (now.proof == Proof::least)
        limits.lighter_than = now.weight;
    const LeftOut gone(model_, relations_[relation]);
    graph_.let_go = graph_.conditions_of[relation];
    const Least then = LeastWay(graph_, risks_, goals_[part]).find(limits, known);
    graph_.let_go.clear();
    Cell cell = cell_of(then);
    cell.same = limits.lighter_than
                    ? then.proof == Proof::bounded && then.at_least >= *limits.lighter_than
                    : then.proof == Proof::impossible;
    return cell;
}

void Copy::plan_without(RelationIndex relation, const std::vector<Cell>& now,
                        std::vector<std::vector<Cell>>& rows) {
    const std::int64_t weight = weight_of_loosening(graph_, relations_[relation].other);
    const LeftOut gone(model_, relations_[relation]);
    std::vector<NodeIndex> goal_nodes;
    TaskGraph graph = task_graph(on_, goals_, {}, goal_nodes);
    if (relations_[relation].sort == RelationSort::one_use) {
        const ItemId bond = relations_[relation].item;
        const model::Kind& kind = model_.kind_of(bond);
        for (const std::uint32_t unit : graph.units_of[bond.value]) {
            for (const TaskIndex task : graph.tasks_of[unit]) {
                if (kind.set_of[graph.tasks[task].to] == 0 &&
                    !model::contains(kind.binds, graph.tasks[task].to))
                    graph.tasks[task].weight =
                        share_of(weight, graph.units[unit].members.size(), model_.item(bond).count);
            }
        }
    }
    const Risks risks = risks_of(graph);
    for (std::size_t part = 0; part < goals_.size(); ++part) {
        graph.goal = goal_nodes[part];
        Cell& cell = rows[part][relation];
        cell = cell_of(LeastWay(graph, risks, goals_[part]).find({}));
        cell.same = now[part].proof == cell.proof && now[part].weight == cell.weight &&
                    (cell.proof == Proof::least || cell.proof == Proof::impossible);
    }
}

// Runs the jobs 0 .. count - 1, each on one of the threads; each writes where no other does.
void share_out(std::size_t count, unsigned threads,
               const std::function<std::function<void(std::size_t)>()>& begin) {
    std::atomic<std::size_t> next{0};
    const auto work = [&] {
        const auto job = begin();
        for (std::size_t i = next++; i < count; i = next++)
            job(i);
    };
    std::vector<std::thread> others;
    for (unsigned i = 1; i < threads && i < count; ++i)
        others.emplace_back(work);
    work();
    for (std::thread& other : others)
        other.join();
}

bool is_proved(Proof proof) { return proof == Proof::least || proof == Proof::impossible; }

// What the relation changes for the part; nothing when that is nothing, or was not proved.
std::optional<PartThen> difference(ItemId part, const Cell& now, const Cell& then) {
    if (then.same || !is_proved(now.proof) || !is_proved(then.proof))
        return std::nullopt;
    PartThen result;
    result.part = part;
    result.acts = then.acts;
    result.seconds = seconds_of_change(then.weight);
    if (now.proof != then.proof) {
        result.opened = then.proof == Proof::least;
        result.now_impossible = !result.opened;
        return result;
    }
    result.acts_saved = static_cast<long long>(now.acts) - static_cast<long long>(then.acts);
    const std::int64_t saved = milliseconds_of(now.weight) - milliseconds_of(then.weight);
    result.seconds_saved = static_cast<double>(saved) / 1000;
    return result;
}

void add_up(WhatIf& result, const std::vector<Relation>& relations, const std::vector<Cell>& now,
            const std::vector<std::vector<Cell>>& rows) {
    for (std::size_t r = 0; r < relations.size(); ++r) {
        Change change;
        change.relation = relations[r];
        bool open = false; // some part without a proof
        for (std::size_t p = 0; p < now.size(); ++p) {
            const Cell& cell = rows[p][r];
            result.planned += cell.planned ? 1 : 0;
            const bool unproved = !cell.same && !(is_proved(now[p].proof) && is_proved(cell.proof));
            result.not_proved += unproved ? 1 : 0;
            open = open || unproved;
            if (const auto then = difference(result.parts[p].part, now[p], cell)) {
                change.opened += then->opened ? 1 : 0;
                change.acts_saved += then->acts_saved;
                change.seconds_saved += then->seconds_saved;
                change.parts.push_back(*then);
            }
        }
        if (!change.parts.empty())
            result.changes.push_back(std::move(change));
        else
            result.unchanged += open ? 0 : 1;
    }
    std::stable_sort(
        result.changes.begin(), result.changes.end(), [](const Change& a, const Change& b) {
            return std::tuple(a.opened, a.seconds_saved, a.acts_saved, b.parts.size()) >
                   std::tuple(b.opened, b.seconds_saved, b.acts_saved, a.parts.size());
        });
}

} // namespace

WhatIf what_if(const bench::Bench& bench, const std::vector<ItemId>& parts, bool expose,
               unsigned threads) {
    const std::vector<Relation> relations = relations_of(bench);
    std::vector<WayInGoal> goals;
    for (const ItemId part : parts)
        goals.push_back({{part}, expose});
    std::vector<bool> loosens;
    std::vector<RelationIndex> others;
    for (RelationIndex r = 0; r < relations.size(); ++r) {
        loosens.push_back(only_loosens(bench, relations[r]));
        if (!loosens.back())
            others.push_back(r);
    }
    std::vector<Cell> now(parts.size());
    std::vector<std::vector<Cell>> rows(parts.size(), std::vector<Cell>(relations.size()));
    const unsigned at_once =
        threads != 0 ? threads : std::max(1U, std::thread::hardware_concurrency());
    share_out(parts.size(), at_once, [&] {
        auto copy = std::make_shared<Copy>(bench, goals, relations);
        return [&, copy](std::size_t p) { now[p] = copy->plan_part(p, loosens, rows[p]); };
    });
    share_out(others.size(), at_once, [&] {
        auto copy = std::make_shared<Copy>(bench, goals, relations);
        return [&, copy](std::size_t i) { copy->plan_without(others[i], now, rows); };
    });
    WhatIf result;
    for (std::size_t p = 0; p < parts.size(); ++p)
        result.parts.push_back(
            {parts[p], now[p].proof, now[p].acts, seconds_of_change(now[p].weight)});
    result.relations = relations.size();
    add_up(result, relations, now, rows);
    return result;
}

std::string in_words(const Model& model, const SourceMap& sources, const Relation& relation) {
    const auto named = [&](ItemId id) { return "`" + model.item(id).name + "`"; };
    const std::string item = named(relation.item);
    const std::string other = named(relation.other);
    switch (relation.sort) {
    case RelationSort::in_the_way: {
        const std::string_view line =
            relation.because.known() ? sources.slice(relation.because) : std::string_view{};
        if (line.starts_with("covers"))
            return "with " + other + " not covering " + item;
        return "with " + item + (line.starts_with("under") ? " not under " : " not behind ") +
               other;
    }
    case RelationSort::holds:
        return "with " + item +
               (model.item(relation.other).role == model::Role::connector ? " not joined by "
                                                                          : " not held by ") +
               other;
    case RelationSort::blocks:
        return "with " + other + " not blocking " + item;
    case RelationSort::needs: {
        const model::Need& need = model.item(relation.item).needs[relation.line];
        return "with no need of " + other + " " +
               model.kind_of(relation.other).states[need.condition.state] + " to " + need.verb +
               " " + item;
    }
    case RelationSort::one_use:
        return "with " + item + " undone as " + other + " is, and used again";
    }
    return {};
}

} // namespace matchmark::plan
