// The model and the actions of a guide for other programs, by docs/model-json.md.
#include "publish/json.hpp"

#include "bench/running.hpp"
#include "bench/work.hpp"
#include "publish/json_model.hpp"

namespace matchmark::publish {

using bench::Bench;
using bench::State;
using model::Action;
using model::ActionSort;
using model::Item;
using model::ItemId;
using model::Model;
using model::Procedure;
using model::Step;

namespace {

const char* section_name(model::Section section) {
    switch (section) {
    case model::Section::before:
        return "before";
    case model::Section::take_apart:
        return "take-apart";
    case model::Section::work:
        return "work";
    case model::Section::put_back:
        return "put-back";
    }
    return "work";
}

const char* sort_name(ActionSort sort) {
    switch (sort) {
    case ActionSort::verb:
        return "verb";
    case ActionSort::replace:
        return "replace";
    case ActionSort::mark:
        return "mark";
    case ActionSort::measure:
        return "measure";
    case ActionSort::dispose:
        return "dispose";
    case ActionSort::scrap:
        return "scrap";
    case ActionSort::leave_off:
        return "leave-off";
    case ActionSort::do_guide:
        return "do";
    }
    return "verb";
}

const char* sort_name(model::ResourceSort sort) {
    switch (sort) {
    case model::ResourceSort::tool:
        return "tool";
    case model::ResourceSort::spare:
        return "spare";
    case model::ResourceSort::supply:
        return "supply";
    }
    return "tool";
}

Json json_flags(std::uint8_t flags) {
    Json names = Json::array();
    const auto name = [&](std::uint8_t flag, const char* word) {
        if ((flags & flag) != 0) {
            names.push_back(word);
        }
    };
    name(bench::spent, "spent");
    name(bench::renewed, "renewed");
    name(bench::marked, "marked");
    name(bench::disposed, "disposed");
    name(bench::given_up, "given-up");
    return names;
}

// For each member, its state in each set, and what happened to it.
Json json_members(const Bench& bench, const State& state, ItemId id) {
    const Item& item = bench.model->item(id);
    const model::Kind& kind = bench.model->kind(item.kind);
    Json members = Json::array();
    for (std::uint16_t member = 0; member < item.count; ++member) {
        Json states = Json::array();
        for (unsigned set = 0; set < kind.set_count(); ++set) {
            states.push_back(kind.states[bench::state_of(bench, state, id, member, set)]);
        }
        members.push_back(
            {{"states", states}, {"flags", json_flags(state.flags[item.first_member + member])}});
    }
    return members;
}

Json json_state(const Bench& bench, const State& state) {
    Json all = Json::object();
    for (std::uint32_t i = 0; i < bench.model->items.size(); ++i) {
        if (bench.exists(ItemId{i})) {
            all[bench.model->items[i].name] = json_members(bench, state, ItemId{i});
        }
    }
    return all;
}

// What is gathered while the steps are walked through.
struct Walk {
    const SourceMap& sources;
    const Model& model;
    const Procedure& procedure;
    Bench bench;
    State state;
    Json acts = Json::array();
};

Json json_place(const SourceMap& sources, Span span) {
    if (!span.known()) {
        return {};
    }
    const Place place = sources.place(span.file, span.begin);
    return {{"file", sources.file(span.file).path}, {"line", place.line}, {"column", place.column}};
}

Json resource_names(const Walk& walk, const std::vector<model::ResourceId>& ids) {
    Json names = Json::array();
    for (const model::ResourceId id : ids) {
        names.push_back(walk.procedure.resources[id.value].name);
    }
    return names;
}

void add_act(Walk& walk, const Action& action, const model::Target& target, std::size_t step) {
    Action one = action;
    one.targets = {target};
    const ItemId item = target.ref.item;
    const Json before = json_members(walk.bench, walk.state, item);
    bench::carry_out(walk.bench, walk.state, walk.procedure.resources, one);
    walk.acts.push_back(
        {{"step", step},
         {"sort", sort_name(action.sort)},
         {"verb", action.verb},
         {"item", walk.model.item(item).name},
         {"members", target.ref.members.all()},
         {"supplied", bench::supplied(walk.model, walk.procedure.resources, action, item)},
         {"with", resource_names(walk, action.with)},
         {"tightening",
          json_tightening(action.tightening->torque || !action.tightening->pattern.empty()
                              ? std::optional(*action.tightening)
                              : std::nullopt)},
         {"duration", json_quantity(action.duration)},
         {"means", *action.means},
         {"limit", json_limit(action.limit)},
         {"aspect", *action.aspect},
         {"across", json_names(walk.model, action.across)},
         {"as_marked", action.as_marked},
         {"derived", action.derived},
         {"place", json_place(walk.sources, action.line)},
         {"before", before},
         {"after", json_members(walk.bench, walk.state, item)}});
}

Json json_proofs(const Walk& walk, const Step& step) {
    Json proofs = Json::array();
    for (const model::Proof& proof : step.proves) {
        if (proof.item.known()) {
            proofs.push_back({{"item", walk.model.item(proof.item).name}});
        } else {
            proofs.push_back({{"function", walk.model.functions[proof.function.value].name}});
        }
    }
    return proofs;
}

Json json_step(Walk& walk, const Step& step, std::size_t number) {
    const std::size_t first = walk.acts.size();
    for (const Action& action : step.actions) {
        if (((action.variants >> walk.bench.variant) & 1U) == 0) {
            continue;
        }
        for (const model::Target& target : action.targets) {
            if (walk.bench.exists(target.ref.item)) {
                add_act(walk, action, target, number);
            }
        }
    }
    if (step.is_test) {
        bench::run(walk.bench, walk.state, step, bench::renewed_by(walk.procedure.steps));
    }
    Json when = Json::array();
    for (const model::Condition& condition : step.when) {
        when.push_back(json_condition(walk.model, condition));
    }
    return {{"number", number},
            {"section", section_name(step.section)},
            {"test", step.is_test},
            {"name", step.name},
            {"title", step.title},
            {"derived", step.derived},
            {"first_act", first},
            {"act_count", walk.acts.size() - first},
            {"when", when},
            {"proves", json_proofs(walk, step)},
            {"with", resource_names(walk, step.with)}};
}

Json json_steps(Walk& walk) {
    Json steps = Json::array();
    for (const Step& step : walk.procedure.steps) {
        if (((step.variants >> walk.bench.variant) & 1U) != 0) {
            steps.push_back(json_step(walk, step, steps.size() + 1));
        }
    }
    return steps;
}

Json json_resources(const Walk& walk) {
    Json resources = Json::array();
    for (const model::Resource& resource : walk.procedure.resources) {
        Json amounts = Json::array();
        for (const model::Quantity& quantity : resource.quantities) {
            amounts.push_back(json_quantity(quantity));
        }
        resources.push_back({{"sort", sort_name(resource.sort)},
                             {"name", resource.name},
                             {"text", resource.text},
                             {"quantities", amounts},
                             {"for", json_names(walk.model, resource.for_items)}});
    }
    return resources;
}

} // namespace

std::string json(const SourceMap& sources, const Model& model, const Procedure& procedure,
                 unsigned variant) {
    const model::Guide& guide = model.guide(procedure.guide);
    const Bench bench{&model, variant};
    Walk walk{sources, model, procedure, bench, bench::assembled(bench)};
    const auto& variants = model.device.variants;
    Json root;
    root["format"] = "matchmark-model";
    root["version"] = 1;
    root["guide"] = {{"name", guide.name}, {"title", guide.title}};
    root["device"] = {{"name", model.device.name}, {"title", model.device.title}};
    root["variant"] = variant < variants.size() ? Json(variants[variant]) : Json();
    root["kinds"] = json_kinds(model);
    root["items"] = json_items(model, variant);
    root["functions"] = json_functions(model);
    root["resources"] = json_resources(walk);
    root["start"] = json_state(bench, walk.state);
    root["steps"] = json_steps(walk);
    root["acts"] = std::move(walk.acts);
    root["end"] = json_state(bench, walk.state);
    // Bytes that are no UTF-8 become U+FFFD: the output is JSON whatever the source holds.
    return root.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace matchmark::publish
