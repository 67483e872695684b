// Looks for the order of the same acts that has the fewest steps.
//
// What ends a step ends it in any order; only changes of tool in the middle of one cost more. With
// a tool in hand, all that it can do and that ends no step is done at once: the step that follows
// ends them together. So a stage of the work is what is done, the tool used in the open step, and
// whether one is open; stages are gone through by the steps that they have cost.
#include "appraise/steps_of_acts.hpp"

#include <algorithm>
#include <deque>
#include <set>
#include <tuple>

namespace matchmark::appraise {

namespace {

using Done = std::vector<bool>;

struct Stage {
    Done done;
    std::size_t tool = 0; // of the open step, into the tools; 0: none yet
    bool open = false;
    std::size_t broken = 0; // steps that a change of tool has ended
    bench::State state;
    std::vector<std::size_t> order;
};

class Search {
public:
    Search(const bench::Bench& bench, const std::vector<OrderedAct>& acts)
        : bench_(bench), acts_(acts), tool_of_(acts.size()), ends_(acts.size()) {
        const model::Model& model = *bench.model;
        for (std::size_t i = 0; i < acts.size(); ++i) {
            ends_[i] = ends_step(model, acts[i]).has_value();
            if (acts[i].tool.empty())
                continue;
            const auto known = std::find(tools_.begin(), tools_.end(), acts[i].tool);
            tool_of_[i] = static_cast<std::size_t>(known - tools_.begin()) + 1;
            if (known == tools_.end())
                tools_.push_back(acts[i].tool);
        }
        find_barriers();
    }

    // Indices in order; empty when none was found among so many stages.
    std::vector<std::size_t> run(std::size_t most_stages, bool& exhausted);

private:
    void find_barriers();
    [[nodiscard]] bool can(const Stage& stage, std::size_t act) const;
    void perform(Stage& stage, std::size_t act) const;
    void take(Stage& stage, std::size_t tool) const;
    void expand(const Stage& stage);
    void push(Stage stage, bool costs);

    const bench::Bench& bench_;
    const std::vector<OrderedAct>& acts_;
    std::vector<std::string> tools_;
    std::vector<std::size_t> tool_of_;
    std::vector<bool> ends_;
    std::vector<std::vector<std::size_t>> after_; // acts that stay after acts which make safe
    std::set<std::tuple<Done, std::size_t, bool>> seen_;
    std::deque<Stage> queue_;
};

// What makes safe was put where it stands for a reason that the bench does not tell.
void Search::find_barriers() {
    after_.resize(acts_.size());
    std::vector<std::size_t> barriers;
    const model::Model& model = *bench_.model;
    for (std::size_t i = 0; i < acts_.size(); ++i) {
        after_[i] = barriers;
        const model::Item& item = model.item(acts_[i].act.item);
        const model::Kind& kind = model.kind(item.kind);
        const bool makes_safe = kind.set_of[kind.verbs[acts_[i].act.verb].to] != 0 ||
                                item.role == model::Role::energy || item.role == model::Role::fluid;
        if (makes_safe)
            barriers.push_back(i);
    }
}

bool Search::can(const Stage& stage, std::size_t act) const {
    if (stage.done[act] || !std::all_of(after_[act].begin(), after_[act].end(),
                                        [&](std::size_t other) { return stage.done[other]; }))
        return false;
    const model::Item& item = bench_.model->item(acts_[act].act.item);
    const unsigned set = bench_.model->kind(item.kind).set_of[acts_[act].from];
    const auto& members = acts_[act].act.members;
    const auto first = static_cast<std::uint16_t>(members.empty() ? 0 : members.front() - 1);
    return bench::state_of(bench_, stage.state, acts_[act].act.item, first, set) ==
               acts_[act].from &&
           !bench::refusal(bench_, stage.state, acts_[act].act);
}

void Search::perform(Stage& stage, std::size_t act) const {
    bench::perform(bench_, stage.state, acts_[act].act);
    stage.done[act] = true;
    stage.order.push_back(act);
    if (is_preparation(*bench_.model, acts_[act]))
        return;
    stage.open = !ends_[act];
    if (ends_[act])
        stage.tool = 0;
}

// Takes the tool up, and does with it and by hand all that ends no step.
void Search::take(Stage& stage, std::size_t tool) const {
    if (tool != 0)
        stage.tool = tool;
    for (bool again = true; again;) {
        again = false;
        for (std::size_t act = 0; act < acts_.size(); ++act) {
            const bool fits = tool_of_[act] == 0 || tool_of_[act] == stage.tool;
            if (fits && !ends_[act] && can(stage, act)) {
                perform(stage, act);
                again = true;
            }
        }
    }
}

void Search::push(Stage stage, bool costs) {
    if (costs) {
        ++stage.broken;
        queue_.push_back(std::move(stage));
    } else {
        queue_.push_front(std::move(stage));
    }
}

void Search::expand(const Stage& stage) {
    // Later ones are looked at first: the order given is the one that reads best.
    for (std::size_t tool = tools_.size() + 1; tool-- > 0;) {
        const bool changes = tool != 0 && tool != stage.tool;
        const bool costs = changes && stage.tool != 0;
        Stage next = stage;
        next.open = stage.open && !costs;
        take(next, tool);
        for (std::size_t act = acts_.size(); act-- > 0;) {
            const bool fits = tool_of_[act] == 0 ? tool == 0 : tool_of_[act] == next.tool;
            if (ends_[act] && fits && can(next, act)) {
                Stage ended = next;
                perform(ended, act);
                push(std::move(ended), costs);
            }
        }
        if (changes && next.order.size() > stage.order.size())
            push(std::move(next), costs);
    }
}

std::vector<std::size_t> Search::run(std::size_t most_stages, bool& exhausted) {
    Stage first;
    first.done.resize(acts_.size());
    first.state = bench::assembled(bench_);
    queue_.push_back(std::move(first));
    for (std::size_t stages = 0; !queue_.empty(); ++stages) {
        if (stages == most_stages)
            return {};
        Stage stage = std::move(queue_.front());
        queue_.pop_front();
        if (!seen_.emplace(stage.done, stage.tool, stage.open).second)
            continue;
        if (stage.order.size() == acts_.size()) {
            if (!stage.open)
                return stage.order;
            stage.open = false; // what is begun is a step as well
            push(std::move(stage), true);
            continue;
        }
        expand(stage);
    }
    exhausted = true;
    return {};
}

} // namespace

FewestSteps fewest_steps(const bench::Bench& bench, const std::vector<OrderedAct>& acts,
                         std::size_t most_stages) {
    const model::Model& model = *bench.model;
    FewestSteps given{acts, count_steps(model, acts), false};
    // Each act that ends a step ends one in any order.
    const auto ends = static_cast<std::size_t>(
        std::count_if(acts.begin(), acts.end(),
                      [&](const OrderedAct& act) { return ends_step(model, act).has_value(); }));
    if (given.steps.size() <= std::max<std::size_t>(ends, 1)) {
        given.proved = true;
        return given;
    }
    bool exhausted = false;
    const std::vector<std::size_t> found = Search(bench, acts).run(most_stages, exhausted);
    if (found.empty())
        return given;
    FewestSteps better;
    for (const std::size_t act : found)
        better.order.push_back(acts[act]);
    better.steps = count_steps(model, better.order);
    better.proved = true;
    if (better.steps.size() < given.steps.size())
        return better;
    given.proved = better.steps.size() == given.steps.size();
    return given;
}

} // namespace matchmark::appraise
