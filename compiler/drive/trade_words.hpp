// What is declared beside kinds, put into words and into JSON: drives, threads and what they are
// made of, times, tools, gear, ratings, signs, hazards.
#pragma once

#include "drive/kinds/words.hpp"
#include "model/model.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace matchmark::drive {

// Beside the name in a list, one line.
std::string in_brief(const model::Model& model, const model::Drive& drive);
std::string in_brief(const model::Model& model, const model::ThreadForm& form);
std::string in_brief(const model::Model& model, const model::Thread& thread);
std::string in_brief(const model::Model& model, const model::Grade& grade);
std::string in_brief(const model::Model& model, const model::Friction& friction);
std::string in_brief(const model::Model& model, const model::Timing& timing);
std::string in_brief(const model::Model& model, const model::ToolKind& tool);
std::string in_brief(const model::Model& model, const model::Gear& gear);
std::string in_brief(const model::Model& model, const model::Sign& sign);
std::string in_brief(const model::Model& model, const model::Hazard& hazard);

// What follows from a thread's numbers by formula is worked
// out for the usual grade and friction.
Page describe(const model::Model& model, const model::Drive& drive);
Page describe(const model::Model& model, const model::ThreadForm& form);
Page describe(const model::Model& model, const model::Thread& thread);
Page describe(const model::Model& model, const model::Grade& grade);
Page describe(const model::Model& model, const model::Friction& friction);
Page describe(const model::Model& model, const model::Timing& timing);
Page describe(const model::Model& model, const model::ToolKind& tool);
Page describe(const model::Model& model, const model::Gear& gear);
Page describe(const model::Model& model, const model::RatingPart& part);
Page describe(const model::Model& model, const model::Sign& sign);
Page describe(const model::Model& model, const model::Hazard& hazard);

// JSON objects, as text.
std::string as_json(const model::Model& model, const model::Drive& drive);
std::string as_json(const model::Model& model, const model::ThreadForm& form);
std::string as_json(const model::Model& model, const model::Thread& thread);
std::string as_json(const model::Model& model, const model::Grade& grade);
std::string as_json(const model::Model& model, const model::Friction& friction);
std::string as_json(const model::Model& model, const model::Timing& timing);
std::string as_json(const model::Model& model, const model::ToolKind& tool);
std::string as_json(const model::Model& model, const model::Gear& gear);
std::string as_json(const model::Model& model, const model::RatingPart& part);
std::string as_json(const model::Model& model, const model::Sign& sign);
std::string as_json(const model::Model& model, const model::Hazard& hazard);

// What follows from a thread's numbers, for the usual grade and friction; a number that cannot be
// worked out is missing.
struct ThreadFigures {
    const model::Grade* grade = nullptr; // null: the library names no usual one
    const model::Friction* friction = nullptr;
    std::optional<model::Quantity> stress_area;
    std::optional<model::Quantity> breaking_force;
    std::optional<model::Quantity> breaking_torque;
    std::optional<model::Quantity> usual_preload;
    std::optional<model::Quantity> usual_torque;
};
ThreadFigures thread_figures(const model::Model& model, const model::Thread& thread);

// "warns", "obliges", "forbids"
std::string_view form_word(model::SignForm form);
// The names of the kinds that have the hazard.
std::vector<std::string> kinds_with(const model::Model& model, const model::Hazard& hazard);
// "6, 2.5 mm across, for M2 and M2.5 (ISO 4762)"
std::string size_words(const model::DriveSize& size);

} // namespace matchmark::drive
