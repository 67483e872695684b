// What is declared beside kinds as JSON, for programs that offer it while a guide is written.
#include "drive/trade_words.hpp"

#include "language/texts.hpp"

#include "drive/kinds/words.hpp"

#include <nlohmann/json.hpp>

namespace matchmark::drive {

namespace {

using Json = nlohmann::ordered_json;

std::string dumped(const Json& object) {
    return object.dump(-1, ' ', false, Json::error_handler_t::replace);
}

// Quantities as the language writes them.
Json text_or_null(const std::optional<model::Quantity>& quantity) {
    return quantity ? Json(model::to_text(*quantity)) : Json(nullptr);
}

Json text_or_null(const std::string& text) { return text.empty() ? Json(nullptr) : Json(text); }

Json strength(const model::Strength& strength) {
    Json object;
    object["usual"] = text_or_null(strength.usual);
    object["large"] = text_or_null(strength.large);
    object["above"] = text_or_null(strength.above);
    return object;
}

Json size_of(const model::DriveSize& size) {
    Json object;
    object["size"] = size.size;
    object["across"] = text_or_null(size.across);
    object["threads"] = size.threads;
    object["note"] = text_or_null(size.note);
    return object;
}

template <class One> Json started(const char* key, const One& one) {
    Json object;
    object[key] = one.name;
    object["title"] = one.title;
    return object;
}

} // namespace

std::string as_json(const model::Model& /*model*/, const model::Drive& drive) {
    Json object = started("drive", drive);
    object["driven_by"] = drive.driven_by;
    object["sizes"] = Json::array();
    for (const model::DriveSize& size : drive.sizes)
        object["sizes"].push_back(size_of(size));
    object["at_a_pinch"] = Json::array();
    for (const model::StandIn& stand_in : drive.stand_ins) {
        Json entry;
        entry["tool"] = stand_in.tool;
        entry["tool_size"] = text_or_null(stand_in.tool_size);
        entry["for"] = stand_in.size;
        object["at_a_pinch"].push_back(std::move(entry));
    }
    return dumped(object);
}

std::string as_json(const model::Model& /*model*/, const model::ThreadForm& form) {
    Json object = started("form", form);
    object["pitch_line"] = form.pitch_line;
    object["root"] = form.root;
    return dumped(object);
}

std::string as_json(const model::Model& model, const model::Thread& thread) {
    const ThreadFigures figures = thread_figures(model, thread);
    Json object = started("thread", thread);
    object["form"] = thread.form ? Json(thread.form->name) : Json(nullptr);
    object["diameter"] = text_or_null(thread.diameter);
    object["pitch"] = text_or_null(thread.pitch);
    object["root_at_least"] = text_or_null(thread.root_at_least);
    object["bears_on"] = thread.bears_on ? Json(model::to_text(*thread.bears_on)) : Json(nullptr);
    object["breaks_at"] = text_or_null(thread.breaks_at);
    object["stress_area"] = text_or_null(figures.stress_area);
    Json usual;
    usual["grade"] = figures.grade == nullptr ? Json(nullptr) : Json(figures.grade->name);
    usual["friction"] = figures.friction == nullptr ? Json(nullptr) : Json(figures.friction->name);
    usual["breaking_force"] = text_or_null(figures.breaking_force);
    usual["breaking_torque"] = text_or_null(figures.breaking_torque);
    usual["preload"] = text_or_null(figures.usual_preload);
    usual["torque"] = text_or_null(figures.usual_torque);
    object["usual"] = std::move(usual);
    return dumped(object);
}

std::string as_json(const model::Model& /*model*/, const model::Grade& grade) {
    Json object = started("grade", grade);
    object["tensile"] = strength(grade.tensile);
    object["yield"] = strength(grade.yield);
    object["shear"] = grade.shear > 0 ? Json(grade.shear) : Json(nullptr);
    object["usual"] = grade.usual;
    return dumped(object);
}

std::string as_json(const model::Model& /*model*/, const model::Friction& friction) {
    Json object = started("friction", friction);
    object["coefficient"] = friction.coefficient;
    object["usual"] = friction.usual;
    return dumped(object);
}

std::string as_json(const model::Model& /*model*/, const model::Timing& timing) {
    Json object = started("timing", timing);
    object["tool_change"] = text_or_null(timing.tool_change);
    object["identify"] = text_or_null(timing.identify);
    object["handle"] = text_or_null(timing.handle);
    object["position"] = text_or_null(timing.position);
    object["set_aside"] = text_or_null(timing.set_aside);
    object["turn"] = text_or_null(timing.turn);
    object["acts"] = Json::array();
    for (const model::TimedVerb& timed : timing.verbs) {
        Json entry;
        entry["verb"] = timed.verb;
        entry["kinds"] = timed.kinds;
        entry["takes"] = text_or_null(timed.takes);
        object["acts"].push_back(std::move(entry));
    }
    object["usual"] = timing.usual;
    return dumped(object);
}

std::string as_json(const model::Model& /*model*/, const model::ToolKind& tool) {
    Json object = started("tool_kind", tool);
    object["class"] =
        tool.tool_class ? Json(std::string(model::describe(*tool.tool_class))) : Json(nullptr);
    object["sets_torque"] = tool.torques ? Json(model::to_text(*tool.torques)) : Json(nullptr);
    return dumped(object);
}

std::string as_json(const model::Model& /*model*/, const model::Gear& gear) {
    Json object = started("gear", gear);
    object["sign"] = text_or_null(gear.sign);
    return dumped(object);
}

std::string as_json(const model::Model& /*model*/, const model::RatingPart& part) {
    Json object;
    object["rating"] = part.code;
    object["title"] = part.title;
    return dumped(object);
}

std::string as_json(const model::Model& /*model*/, const model::Sign& sign) {
    Json object = started("sign", sign);
    object["number"] = text_or_null(sign.number);
    object["form"] = form_word(sign.form);
    object["outline"] = text_or_null(sign.outline);
    return dumped(object);
}

std::string as_json(const model::Model& model, const model::Hazard& hazard) {
    Json object = started("hazard", hazard);
    object["sign"] = text_or_null(hazard.sign);
    object["wear"] = hazard.wear;
    object["order"] = hazard.order;
    object["lit_by"] = hazard.lit_by;
    object["messages"] = Json::array();
    for (const model::Prose& message : hazard.messages) {
        Json entry;
        entry["kind"] = language::prose_word(message.kind);
        entry["markdown"] = message.markdown;
        object["messages"].push_back(std::move(entry));
    }
    object["kinds"] = kinds_with(model, hazard);
    return dumped(object);
}

} // namespace matchmark::drive
