// Kinds and items as JSON values.
#include "publish/json_model.hpp"

#include "model/passing_on.hpp"
#include "model/role_words.hpp"

namespace matchmark::publish {

using model::Item;
using model::ItemId;
using model::Kind;
using model::Model;

namespace {

Json state_names(const Kind& kind, model::StateSet set) {
    Json names = Json::array();
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        if (model::contains(set, static_cast<model::StateId>(i))) {
            names.push_back(kind.states[i]);
        }
    }
    return names;
}

Json json_states(const Kind& kind) {
    Json states = Json::array();
    for (std::size_t i = 0; i < kind.states.size(); ++i) {
        const bool first = kind.set_first[kind.set_of[i]] == i;
        states.push_back({{"name", kind.states[i]}, {"set", kind.set_of[i]}, {"first", first}});
    }
    return states;
}

Json json_verb(const Kind& kind, const model::Verb& verb) {
    return {{"name", verb.name},
            {"from", state_names(kind, verb.from)},
            {"to", kind.states[verb.to]},
            {"set", kind.set_of[verb.to]},
            {"by_hand", verb.by_hand},
            {"by_driver", verb.by_driver},
            {"tools", verb.tools},
            {"safe_when_live", verb.safe_when_live},
            {"from_outside", verb.from_outside},
            {"limit", json_limit(verb.limit)},
            {"takes", json_quantity(verb.takes)},
            {"waits", json_quantity(verb.waits)},
            {"decays", verb.decays}};
}

Json json_kind(const Model& model, const Kind& kind) {
    Json verbs = Json::array();
    for (const model::Verb& verb : kind.verbs) {
        verbs.push_back(json_verb(kind, verb));
    }
    Json hazards = Json::array();
    for (const model::HazardUse& use : kind.hazards) {
        hazards.push_back({{"hazard", model.hazards[use.hazard.value].name},
                           {"until", state_names(kind, use.safe)},
                           {"on", use.on_reach ? "reach" : "touch"}});
    }
    Json needs = Json::array();
    for (const model::OwnNeed& need : kind.needs) {
        needs.push_back({{"states", state_names(kind, need.states)}, {"verb", need.verb}});
    }
    return {{"name", kind.name},
            {"title", kind.title},
            {"role", model::role_word(kind.role)},
            {"states", json_states(kind)},
            {"verbs", verbs},
            {"present_in", state_names(kind, kind.present)},
            {"binds_in", state_names(kind, kind.binds)},
            {"covers_in", state_names(kind, kind.covers)},
            {"blocks_in", state_names(kind, kind.blocks)},
            {"live_in", state_names(kind, kind.live)},
            {"may_end_in", state_names(kind, kind.may_end)},
            {"laid_first", kind.laid_first},
            {"lies_loose", kind.lies_loose},
            {"parted_last", kind.parted_last},
            {"clamped", kind.clamped},
            {"lets_out", kind.lets_out},
            {"bare", kind.bare},
            {"runs_out", kind.runs_out},
            {"rests_on_pressure", kind.rests_on_pressure},
            {"guards", kind.guards},
            {"protects", kind.protects},
            {"moves", kind.moves},
            {"passes_on", kind.passes_on},
            {"one_use", kind.one_use},
            {"asks_for_torque", kind.asks_torque},
            {"asks_for_test", kind.asks_test},
            {"hazards", hazards},
            {"needs", needs},
            {"waste", kind.waste},
            {"licensed", kind.needs_license ? Json(kind.licensed) : Json()}};
}

Json json_reach(const Model& model, const Item& item) {
    Json clauses = Json::array();
    for (const model::ReachClause& clause : item.reach) {
        Json ways = Json::array();
        for (const auto& way : clause.ways) {
            Json refs = Json::array();
            for (const model::ItemRef& ref : way) {
                refs.push_back(json_ref(model, ref));
            }
            ways.push_back(refs);
        }
        clauses.push_back({{"ways", ways}});
    }
    return clauses;
}

Json name_or_null(const Model& model, ItemId item) {
    return item.known() ? Json(model.item(item).name) : Json();
}

Json json_lines_through(const Model& model, const Item& item) {
    Json lines = Json::array();
    for (const model::FedThrough& line : item.feeding->lines_through)
        lines.push_back({{"part", model.item(line.part).name},
                         {"through", json_names(model, line.connectors)}});
    return lines;
}

Json json_item_needs(const Model& model, const Item& item) {
    Json needs = Json::array();
    for (const model::Need& need : item.needs) {
        Json one = json_condition(model, need.condition);
        one["verb"] = need.verb;
        one["alone"] = need.alone;
        one["or"] = state_names(model.kind_of(need.condition.item.item), need.or_in);
        needs.push_back(one);
    }
    return needs;
}

Json json_item(const Model& model, const Item& item, unsigned variant) {
    Json spec = Json::array();
    for (const model::SpecPhrase& phrase : item.spec) {
        spec.push_back(phrase->text);
    }
    return {{"name", item.name},
            {"title", item.title},
            {"role", model::role_word(item.role)},
            {"kind", model.kind(item.kind).name},
            {"count", item.count},
            {"exists", ((item.variants >> variant) & 1U) != 0},
            {"carrier", name_or_null(model, item.carrier)},
            {"touches", json_names(model, item.touches)},
            {"reach", json_reach(model, item)},
            {"blocked_by", json_names(model, item.blocked_by)},
            {"feeds", json_names(model, model::fed_directly(item))},
            {"drives", json_names(model, item.feeding->drives)},
            {"through", json_names(model, item.through)},
            {"lines_through", json_lines_through(model, item)},
            {"needs", json_item_needs(model, item)},
            {"one_use", item.one_use},
            {"safe_when_live", item.safe_when_live},
            {"renewed_as", name_or_null(model, item.renewed_as)},
            {"tightening", json_tightening(item.tightening)},
            {"keep", item.rare->keep},
            {"told_by", *item.told_by},
            {"drive", item.bolt->drive},
            {"drive_size", item.bolt->drive_size},
            {"spec", spec}};
}

} // namespace

Json json_quantity(const std::optional<model::Quantity>& quantity) {
    if (!quantity) {
        return {};
    }
    return {{"value", quantity->value}, {"unit", quantity->unit}, {"base", quantity->base}};
}

Json json_limit(const std::optional<model::Limit>& limit) {
    if (!limit) {
        return {};
    }
    return {{"least", json_quantity(limit->least)},
            {"most", json_quantity(limit->most)},
            {"strict", limit->strict}};
}

Json json_tightening(const std::optional<model::Tightening>& tightening) {
    if (!tightening) {
        return {};
    }
    return {{"torque", json_quantity(tightening->torque)},
            {"pattern", tightening->pattern},
            {"passes", tightening->passes}};
}

Json json_ref(const Model& model, const model::ItemRef& ref) {
    return {{"item", model.item(ref.item).name}, {"members", ref.members}};
}

Json json_condition(const Model& model, const model::Condition& condition) {
    Json one = json_ref(model, condition.item);
    one["state"] = model.kind_of(condition.item.item).states[condition.state];
    return one;
}

Json json_names(const Model& model, const std::vector<ItemId>& items) {
    Json names = Json::array();
    for (const ItemId item : items) {
        names.push_back(model.item(item).name);
    }
    return names;
}

Json json_kinds(const Model& model) {
    std::vector<bool> used(model.kinds.size());
    for (const Item& item : model.items) {
        used[item.kind.value] = true;
    }
    Json kinds = Json::array();
    for (std::size_t i = 0; i < model.kinds.size(); ++i) {
        if (used[i]) {
            kinds.push_back(json_kind(model, model.kinds[i]));
        }
    }
    return kinds;
}

Json json_items(const Model& model, unsigned variant) {
    Json items = Json::array();
    for (const Item& item : model.items) {
        items.push_back(json_item(model, item, variant));
    }
    return items;
}

Json json_functions(const Model& model) {
    Json functions = Json::array();
    for (const model::Function& function : model.functions) {
        functions.push_back({{"name", function.name},
                             {"title", function.title},
                             {"rating", function.is_rating},
                             {"through", json_names(model, function.through)}});
    }
    return functions;
}

} // namespace matchmark::publish
