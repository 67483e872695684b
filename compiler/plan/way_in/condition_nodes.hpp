// What waits for what, as it is being worked out: the nodes of the task graph in the making.
#pragma once

#include "plan/way_in/tasks.hpp"

#include <algorithm>

namespace matchmark::plan {

using Chain = std::vector<model::ItemId>;

class Conditions {
public:
    Conditions(TaskGraph& graph, const std::vector<Relation>& relations)
        : graph_(graph), bench_(*graph.bench), model_(*bench_.model),
          start_(bench::assembled(bench_)), relations_(relations) {
        graph_.conditions_of.resize(relations.size());
        for (std::uint32_t i = 0; i < model_.items.size(); ++i) {
            if (!bench_.exists(model::ItemId{i}))
                continue;
            if (!model_.items[i].feeds.empty())
                sources_.push_back(model::ItemId{i});
            if (!model_.kind_of(model::ItemId{i}).hazards.empty())
                dangers_.push_back(model::ItemId{i});
        }
    }

    void build(const std::vector<WayInGoal>& goals);
    NodeIndex goal_node(const WayInGoal& goal);
    void finish();

private:
    NodeIndex add(NodeSort sort, std::vector<NodeIndex> children, ActReason reason = {});
    NodeIndex fact(std::uint32_t unit, model::StateId state);
    NodeIndex in_states(const model::ItemRef& ref, model::StateSet states, ActReason reason);
    NodeIndex left(const model::ItemRef& ref, model::StateSet states, ActReason reason);
    NodeIndex off(model::ItemId part, ActReason reason);
    NodeIndex out_of_the_way(const model::ItemRef& ref, const Chain& at, model::ItemId of,
                             Span because);
    NodeIndex reach(model::ItemId id, const Chain& at, const std::vector<model::ItemId>& with_it);
    Chain seat_chain(model::ItemId id) const;
    NodeIndex lies_open(model::ItemId id);
    NodeIndex one_terminal_open(const std::vector<model::ItemId>& terminals);

    std::vector<NodeIndex> dead(model::ItemId source, model::ItemId part, model::ItemId worked_on);
    std::vector<NodeIndex> parted(model::ItemId source, model::ItemId part, model::ItemId worked_on,
                                  const ActReason& live);
    void add_power(const Task& task, model::ItemId source, model::ItemId part,
                   const std::vector<NodeIndex>& gone, std::vector<NodeIndex>& all);
    void add_reach(const Task& task, std::vector<NodeIndex>& all);
    void add_needs(const Task& task, std::vector<NodeIndex>& all);
    void add_live(const Task& task, const std::vector<model::ItemId>& moved,
                  std::vector<NodeIndex>& all);
    void add_driven(const Task& task, std::vector<NodeIndex>& all);
    void add_supplies_off(const Task& task, std::vector<NodeIndex>& all);
    void add_held(const Task& task, const std::vector<model::ItemId>& moved,
                  std::vector<NodeIndex>& all);
    void add_emptied(const Task& task, const std::vector<WayInGoal>& goals,
                     std::vector<NodeIndex>& all);
    [[nodiscard]] bool waits_for(model::ItemId fluid, model::ItemId tie) const;
    NodeIndex emptied(model::ItemId fluid, model::ItemId part);
    void add_touched_hazards(const Task& task, std::vector<NodeIndex>& all);
    void add_opened_hazards(std::vector<std::vector<NodeIndex>>& needs);
    void bar_openers(model::ItemId id, std::size_t use, model::ItemId open,
                     std::vector<std::vector<NodeIndex>>& needs);
    void add_pressing(const Task& task, std::vector<NodeIndex>& all);
    bool makes_safe(const Task& task, model::ItemId id, model::StateSet safe) const;
    [[nodiscard]] bool is_way_to_safety(const Task& task) const;
    void note(NodeIndex condition, const Relation& gone);
    void note_holds(NodeIndex condition, model::ItemId tie,
                    const std::vector<model::ItemId>& moved);

    [[nodiscard]] bool leaves(const Task& task) const;
    [[nodiscard]] const model::Item& item_of(const Task& task) const {
        return model_.item(graph_.units[task.unit].item);
    }

    TaskGraph& graph_;
    const bench::Bench& bench_;
    const model::Model& model_;
    bench::State start_;
    std::map<std::pair<std::uint32_t, model::StateId>, NodeIndex> facts_;
    std::vector<model::ItemId> sources_; // what feeds something
    std::vector<model::ItemId> dangers_; // what has a hazard
    Relations relations_;
};

} // namespace matchmark::plan
