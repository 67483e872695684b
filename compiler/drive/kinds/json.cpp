// Kinds as JSON, for programs that offer them while a guide is written.
#include "drive/kinds/words.hpp"

#include "language/texts.hpp"
#include "model/role_words.hpp"

#include <nlohmann/json.hpp>

namespace matchmark::drive {

namespace {

using Json = nlohmann::ordered_json;

std::string dumped(const Json& object) {
    return object.dump(-1, ' ', false, Json::error_handler_t::replace);
}

Json messages_of(const std::vector<model::Prose>& messages) {
    Json list = Json::array();
    for (const model::Prose& message : messages) {
        Json entry;
        entry["kind"] = language::prose_word(message.kind);
        entry["markdown"] = message.markdown;
        list.push_back(std::move(entry));
    }
    return list;
}

Json verbs_of(const model::Kind& kind) {
    Json list = Json::array();
    for (const model::Verb& verb : kind.verbs) {
        Json entry;
        entry["verb"] = verb.name;
        entry["from"] = state_names(kind, verb.from);
        entry["to"] = kind.states[verb.to];
        entry["tools"] = tool_words(verb);
        entry["limit"] = verb.limit ? Json(model::to_text(*verb.limit)) : Json(nullptr);
        entry["takes"] = verb.takes ? Json(model::to_text(*verb.takes)) : Json(nullptr);
        entry["waits"] = verb.waits ? Json(model::to_text(*verb.waits)) : Json(nullptr);
        entry["decays"] = verb.decays;
        entry["safe_when_live"] = verb.safe_when_live;
        entry["from_outside"] = verb.from_outside;
        list.push_back(std::move(entry));
    }
    return list;
}

Json states_of(const model::Kind& kind) {
    Json sets = Json::array();
    for (std::size_t set = 0; set < kind.set_count(); ++set) {
        Json names = Json::array();
        for (std::size_t i = 0; i < kind.states.size(); ++i) {
            if (kind.set_of[i] == set) {
                names.push_back(kind.states[i]);
            }
        }
        sets.push_back(std::move(names));
    }
    return sets;
}

} // namespace

std::string kind_as_json(const model::Model& model, const model::Kind& kind) {
    Json object;
    object["kind"] = kind.name;
    object["title"] = kind.title;
    object["role"] = model::role_word(kind.role);
    object["state_sets"] = states_of(kind);
    object["verbs"] = verbs_of(kind);
    object["binds_in"] = state_names(kind, kind.binds);
    object["covers_in"] = state_names(kind, kind.covers);
    object["blocks_in"] = state_names(kind, kind.blocks);
    object["live_in"] = state_names(kind, kind.live);
    object["may_end_in"] = state_names(kind, kind.may_end);
    object["clamped"] = kind.clamped;
    object["lies_loose"] = kind.lies_loose;
    object["parted_last"] = kind.parted_last;
    object["lets_out"] = kind.lets_out;
    object["bare"] = kind.bare;
    object["runs_out"] = kind.runs_out;
    object["rests_on_pressure"] = kind.rests_on_pressure;
    object["guards"] = kind.guards;
    object["protects"] = kind.protects;
    object["moves"] = kind.moves;
    object["passes_on"] = kind.passes_on;
    object["one_use"] = kind.one_use;
    object["used_again_if"] = kind.used_again_if;
    object["good_for"] = kind.good_for > 0 ? Json(kind.good_for) : Json(nullptr);
    object["asks_for_torque"] = kind.asks_torque;
    object["asks_for_test"] = kind.asks_test;
    object["waste"] = kind.waste;
    object["licensed"] = kind.needs_license ? Json(kind.licensed) : Json(nullptr);
    object["hazards"] = Json::array();
    for (const model::HazardUse& use : kind.hazards) {
        Json entry;
        entry["hazard"] = model.hazards[use.hazard.value].name;
        entry["until"] = state_names(kind, use.safe);
        entry["on"] = use.on_reach ? "reach" : "touch";
        object["hazards"].push_back(std::move(entry));
    }
    object["messages"] = messages_of(kind.messages);
    return dumped(object);
}

} // namespace matchmark::drive
