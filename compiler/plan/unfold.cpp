// Writes out what a guide leaves to the compiler: sub-guides, the way back, the places of tests,
// the usual tool and torque.
#include "plan/unfold.hpp"

#include "bench/work.hpp"
#include "model/fitting.hpp"
#include "plan/put_back.hpp"
#include "plan/trials.hpp"

#include <algorithm>
#include <iterator>
#include <set>
#include <utility>

namespace matchmark::plan {

using model::Action;
using model::ActionSort;
using model::Guide;
using model::GuideId;
using model::Model;
using model::Procedure;
using model::ResourceId;
using model::Section;
using model::Step;

namespace {

// Resources of a guide, by their place in it, as they are numbered in the procedure.
using ResourceMap = std::vector<ResourceId>;

class Unfolding {
public:
    explicit Unfolding(const Model& model) : model_(model) {}

    Procedure unfold(GuideId id);

private:
    std::vector<ResourceId> take_resources(const Guide& guide);
    void take_steps(GuideId id, bool own);
    void take_opening_step(const Guide& guide, const Step& step, const ResourceMap& map);
    void take_words(const Guide& guide, const ResourceMap& map,
                    const std::vector<std::pair<std::string, std::string>>& names);
    std::string free_name(const std::string& wanted, const std::string& guide);
    void complete_actions();

    const Model& model_;
    Procedure procedure_;
    std::vector<GuideId> under_way_;
    std::vector<WrittenBack> written_;
    std::vector<Step> tests_;
    std::set<std::string> names_;
    std::vector<std::pair<std::string, std::string>>
        renamed_; // this guide's step -> the procedure's
};

bool changes(const ResourceMap& map) {
    for (std::uint32_t i = 0; i < map.size(); ++i) {
        if (map[i].value != i)
            return true;
    }
    return false;
}

void map_resources(model::SeldomList<ResourceId>& ids, const ResourceMap& map) {
    if (ids.empty())
        return;
    for (ResourceId& id : ids.edit())
        id = map[id.value];
}

Step mapped(Step step, const ResourceMap& map) {
    const bool renumbered = changes(map);
    const bool in_some =
        std::any_of(step.actions.begin(), step.actions.end(),
                    [&](const Action& action) { return (action.variants & ~step.variants) != 0; });
    if (!renumbered && !in_some)
        return step;
    map_resources(step.with, map);
    for (Action& action : step.actions.edit()) {
        map_resources(action.with, map);
        if (action.otherwise)
            map_resources(action.otherwise.edit().with, map);
        action.variants &= step.variants;
    }
    return step;
}

// A sub-guide's tool of the same name is the same tool.
std::vector<ResourceId> Unfolding::take_resources(const Guide& guide) {
    std::vector<ResourceId> map;
    for (const model::Resource& resource : guide.resources) {
        auto& list = procedure_.resources;
        const auto known = std::find_if(list.begin(), list.end(), [&](const auto& entry) {
            return entry.name == resource.name;
        });
        map.push_back(ResourceId{static_cast<std::uint32_t>(known - list.begin())});
        if (known == list.end())
            list.push_back(resource);
    }
    return map;
}

std::string Unfolding::free_name(const std::string& wanted, const std::string& guide) {
    std::string name = wanted;
    if (names_.count(name) != 0)
        name = guide + "-" + wanted;
    for (int n = 2; names_.count(name) != 0; ++n)
        name = wanted + "-" + std::to_string(n);
    names_.insert(name);
    return name;
}

void Unfolding::take_opening_step(const Guide& guide, const Step& step, const ResourceMap& map) {
    const bool does = step.actions.size() == 1 && step.actions.front().sort == ActionSort::do_guide;
    if (!does) {
        Step taken = mapped(step, map);
        taken.name = free_name(step.name, guide.name);
        renamed_.emplace_back(step.name, taken.name);
        procedure_.steps.push_back(std::move(taken));
        return;
    }
    const GuideId other = step.actions.front().guide;
    const std::size_t first = procedure_.steps.size();
    if (std::find(under_way_.begin(), under_way_.end(), other) == under_way_.end()) {
        const auto saved = renamed_;
        take_steps(other, false);
        renamed_ = saved;
    }
    for (std::size_t i = first; i < procedure_.steps.size(); ++i) {
        if (i == first) {
            auto& prose = procedure_.steps[i].prose.edit();
            prose.insert(prose.begin(), step.prose.begin(), step.prose.end());
        }
        procedure_.steps[i].section = step.section;
    }
}

// The author's words for the way back, tied to the opening steps that they reverse.
void Unfolding::take_words(const Guide& guide, const ResourceMap& map,
                           const std::vector<std::pair<std::string, std::string>>& names) {
    std::string before;
    for (std::size_t i = 0; i < guide.steps.size(); ++i) {
        const Step& step = guide.steps[i];
        if (step.section != Section::put_back)
            continue;
        if (step.is_test) {
            tests_.push_back(mapped(step, map));
            continue;
        }
        WrittenBack words;
        words.step = mapped(step, map);
        const auto reversed = std::find_if(
            names.begin(), names.end(), [&](const auto& pair) { return pair.first == step.name; });
        if (reversed != names.end())
            words.reverses = reversed->second;
        if (reversed == names.end()) {
            words.after = before;
            words.first = before.empty() && i < guide.derived_at;
        }
        before = words.reverses.empty() ? step.name : words.reverses;
        written_.push_back(std::move(words));
    }
}

void Unfolding::take_steps(GuideId id, bool own) {
    const Guide& guide = model_.guide(id);
    under_way_.push_back(id);
    const ResourceMap map = take_resources(guide);
    renamed_.clear();
    if (!guide.before.empty()) {
        Step step;
        step.section = Section::before;
        step.name = "before";
        step.title = opening_title;
        step.actions = guide.before;
        step.head = guide.span;
        step.declaration = guide.declaration;
        step.derived = true;
        take_opening_step(guide, step, map);
    }
    for (const Step& step : guide.steps) {
        if (step.section == Section::put_back)
            continue;
        take_opening_step(guide, step, map);
    }
    const auto names = renamed_;
    if (own && !guide.derives_put_back) {
        for (const Step& step : guide.steps) {
            if (step.section == Section::put_back)
                procedure_.steps.push_back(mapped(step, map));
        }
    } else if (guide.derives_put_back) {
        take_words(guide, map, names);
    }
    under_way_.pop_back();
}

bool names_fitting_tool(const Model& model, const Procedure& procedure, const Action& action,
                        const model::Item& item, const model::Verb& verb) {
    return std::any_of(action.with.begin(), action.with.end(), [&](ResourceId id) {
        return model::tool_fits(model, procedure.resources[id.value], item, verb);
    });
}

// Which of the list some line takes already.
std::vector<bool> taken_from(const Procedure& procedure) {
    std::vector<bool> taken(procedure.resources.size());
    for (const Step& step : procedure.steps) {
        for (const Action& action : step.actions) {
            for (const ResourceId id : action.with)
                taken[id.value] = true;
        }
    }
    return taken;
}

// Is a supply on the list that names the seal or fluid, and that no line takes? It is not bought to
// lie there.
bool is_bought_for(const Procedure& procedure, const std::vector<bool>& taken, model::ItemId item) {
    for (std::uint32_t i = 0; i < procedure.resources.size(); ++i) {
        const model::Resource& resource = procedure.resources[i];
        if (!taken[i] && resource.sort == model::ResourceSort::supply &&
            among(resource.for_items, item))
            return true;
    }
    return false;
}

// Written to only where something is added, so that the rest stays the guide's own.
class Completion {
public:
    Completion(Step& step, std::size_t at) : step_(step), at_(at) {}
    [[nodiscard]] const Action& said() const { return step_.actions[at_]; }
    Action& edit() { return step_.actions.edit(at_); }

private:
    Step& step_;
    std::size_t at_;
};

// What is plain to the compiler need not be written: the only tool that fits, the torque declared,
// the only supply that renews.
void complete(const Model& model, const Procedure& procedure, const std::vector<bool>& taken,
              const bench::State& state, Completion action) {
    const std::vector<model::Target> targets = action.said().targets;
    for (const model::Target& target : targets) {
        const model::Item& item = model.item(target.ref.item);
        const model::Kind& kind = model.kind(item.kind);
        const model::Verb& verb = kind.verbs[target.verb];
        if (model::asks_tool(verb) &&
            !names_fitting_tool(model, procedure, action.said(), item, verb)) {
            const auto tools = model::fitting_tools(model, procedure.resources, item, verb);
            const bool names_a_tool = std::any_of(
                action.said().with.begin(), action.said().with.end(), [&](ResourceId id) {
                    return procedure.resources[id.value].sort == model::ResourceSort::tool;
                });
            if (tools.size() == 1 && !names_a_tool)
                action.edit().with.push_back(tools.front());
        }
        const bool home = verb.to == kind.set_first.front();
        const std::optional<model::Quantity> said = action.said().tightening->torque;
        const auto& declared = item.tightening->torque;
        const bool as_declared = !said || (declared && said->base == declared->base);
        if (home && model::takes_torque(item.role) && item.tightening && as_declared) {
            model::Tightening whole = *item.tightening;
            if (said)
                whole.torque = said;
            if (!action.said().tightening->pattern.empty())
                whole.pattern = action.said().tightening->pattern;
            if (action.said().tightening->passes > 1)
                whole.passes = action.said().tightening->passes;
            action.edit().tightening = std::move(whole);
        }
        if (!item.rare->keep.empty() && model::comes_to_its_place(kind, verb))
            action.edit().as_marked = true;
        if (!action.said().limit && verb.limit)
            action.edit().limit = verb.limit;
        const bool spent = bench::any_flag(model, state, target.ref.item, bench::spent);
        const bool asks_new =
            (item.one_use && spent) || is_bought_for(procedure, taken, target.ref.item);
        if (!model::leads_home(kind, verb) || !asks_new)
            continue;
        if (bench::supplied(model, procedure.resources, action.said(), target.ref.item))
            continue;
        const auto supplies = model::serving(model, procedure.resources, target.ref.item);
        if (supplies.size() == 1)
            action.edit().with.push_back(supplies.front());
    }
}

void Unfolding::complete_actions() {
    bench::Bench bench{&model_, 0};
    bench::State state = bench::assembled(bench);
    const std::vector<bool> taken = taken_from(procedure_);
    for (Step& step : procedure_.steps) {
        for (std::size_t a = 0; a < step.actions.size(); ++a) {
            if (step.actions[a].sort == ActionSort::verb)
                complete(model_, procedure_, taken, state, {step, a});
            bench::carry_out(bench, state, procedure_.resources, step.actions[a]);
        }
    }
}

Procedure Unfolding::unfold(GuideId id) {
    procedure_.guide = id;
    const Guide& guide = model_.guide(id);
    procedure_.steps.reserve((guide.steps.size() + 1) * (guide.derives_put_back ? 2 : 1));
    take_steps(id, true);
    if (guide.derives_put_back) {
        {
            auto back = derive_put_back(model_, procedure_.resources, procedure_.steps, written_);
            // Room for the tests, and for steps that are cut in two around them.
            procedure_.steps.reserve(procedure_.steps.size() + back.size() + 2 * tests_.size());
            std::move(back.begin(), back.end(), std::back_inserter(procedure_.steps));
        }
        place_trials(model_, procedure_.resources, guide.variants, procedure_.steps, tests_);
    }
    complete_actions();
    return std::move(procedure_);
}

} // namespace

Procedure unfold(const Model& model, GuideId guide) { return Unfolding(model).unfold(guide); }

} // namespace matchmark::plan
