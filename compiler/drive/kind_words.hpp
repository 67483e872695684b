// A kind, drive, thread or hazard put into words, for the listing of the parts library.
#pragma once

#include "model/model.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace matchmark::drive {

std::string_view role_word(model::Role role);
// The names of the states of a set, as declared.
std::vector<std::string> state_names(const model::Kind& kind, model::StateSet set);
// "by hand or pick"; empty when nothing is asked.
std::string tool_words(const model::Verb& verb);
// Several lines, ending in a newline.
std::string describe_kind(const model::Model& model, const model::Kind& kind);
std::string describe_drive(const model::Drive& drive);
std::string describe_thread(const model::Thread& thread);
std::string describe_hazard(const model::Model& model, const model::Hazard& hazard);

// JSON objects, as text.
std::string kind_as_json(const model::Model& model, const model::Kind& kind);
std::string drive_as_json(const model::Drive& drive);
std::string thread_as_json(const model::Thread& thread);
std::string hazard_as_json(const model::Hazard& hazard);

} // namespace matchmark::drive
