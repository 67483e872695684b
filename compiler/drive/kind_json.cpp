// Kinds, drives, threads and hazards as JSON, for programs that offer them while a guide is
// written.
#include "drive/kind_words.hpp"

#include <nlohmann/json.hpp>

namespace matchmark::drive {

namespace {

using Json = nlohmann::ordered_json;

std::string dumped(const Json& object) {
    return object.dump(-1, ' ', false, Json::error_handler_t::replace);
}

Json messages_of(const std::vector<model::Prose>& messages) {
    static constexpr const char* words[] = {"text",    "note",    "why",   "notice",
                                            "caution", "warning", "danger"};
    Json list = Json::array();
    for (const model::Prose& message : messages) {
        Json entry;
        entry["kind"] = words[static_cast<std::size_t>(message.kind)];
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
    object["role"] = role_word(kind.role);
    object["state_sets"] = states_of(kind);
    object["verbs"] = verbs_of(kind);
    object["binds_in"] = state_names(kind, kind.binds);
    object["covers_in"] = state_names(kind, kind.covers);
    object["blocks_in"] = state_names(kind, kind.blocks);
    object["live_in"] = state_names(kind, kind.live);
    object["may_end_in"] = state_names(kind, kind.may_end);
    object["one_use"] = kind.one_use;
    object["asks_for_torque"] = kind.asks_torque;
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

std::string drive_as_json(const model::Drive& drive) {
    Json object;
    object["drive"] = drive.name;
    object["title"] = drive.title;
    object["driven_by"] = drive.driven_by;
    return dumped(object);
}

std::string thread_as_json(const model::Thread& thread) {
    Json object;
    object["thread"] = thread.name;
    object["pitch"] = thread.pitch ? Json(model::to_text(*thread.pitch)) : Json(nullptr);
    object["breaks_at"] =
        thread.breaks_at ? Json(model::to_text(*thread.breaks_at)) : Json(nullptr);
    return dumped(object);
}

std::string hazard_as_json(const model::Hazard& hazard) {
    Json object;
    object["hazard"] = hazard.name;
    object["title"] = hazard.title;
    object["messages"] = messages_of(hazard.messages);
    return dumped(object);
}

} // namespace matchmark::drive
