// The parts library as the compiler reads it, and the numbers that it holds or gives.
#pragma once

#include "model/model.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace matchmark::published {

// The model of a text that may use all of the library; findings stop the program.
model::Model model_of(const std::string& text);

// Null when the library has none of that name.
const model::Thread* find_thread(const model::Model& model, std::string_view name);
const model::Grade* find_grade(const model::Model& model, std::string_view name);
const model::Friction* find_friction(const model::Model& model, std::string_view name);
const model::Hazard* find_hazard(const model::Model& model, std::string_view name);
const model::Kind* find_kind(const model::Model& model, std::string_view name);
const model::Item& item_named(const model::Model& model, std::string_view name);

// The size of a drive for the screws of a thread, where the row's note names the standard; the
// first of the rows that have no note when `standard` is empty.
std::optional<double> drive_size(const model::Model& model, std::string_view drive,
                                 std::string_view thread, std::string_view standard);
// In mm.
std::optional<double> drive_width(const model::Model& model, std::string_view drive,
                                  std::string_view size);
// Of the first row of the drive that names the thread, in mm.
std::optional<double> drive_width_for(const model::Model& model, std::string_view drive,
                                      std::string_view thread);
// In s.
std::optional<double> time_of(const model::Model& model, std::string_view kind,
                              std::string_view verb);

} // namespace matchmark::published
