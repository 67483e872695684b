// Parts of an action's sentence: its items, its tools, how it is tightened.
#pragma once

#include "language/words.hpp"
#include "plan/reader/words.hpp"

#include <optional>

namespace matchmark::plan {

// A run that must not be overlooked.
guide::Words value(std::string text);

// The torque of a target: the action's own, or what the item declares when this verb brings it
// home.
std::optional<model::Tightening>
tightening_of(const model::Model& model, const model::Action& action, const model::Target& target);

// ", in a star pattern, in 3 passes"
std::string manner(const language::Language& language, const model::Tightening& tightening);
std::string torque_text(const language::Language& language, const model::Tightening& tightening);
bool same(const std::optional<model::Tightening>& left,
          const std::optional<model::Tightening>& right);

// The items in both forms, for a pattern to choose from; each language has its own need of
// articles. `each_torque`: with its torque behind each.
std::vector<language::Place> item_places(const ReaderWords& in, const model::Action& action,
                                         bool each_torque = false);

// The tools named, or the one that would be taken where the verb asks for one.
std::vector<const model::Resource*> tools_of(const ReaderWords& in, const model::Action& action);

std::vector<std::string> words_for(const ReaderWords& in,
                                   const std::vector<const model::Resource*>& resources,
                                   bool article);

// " with the driver 6, using the tape"
guide::Words said_with(const ReaderWords& in, const model::Action& action);

} // namespace matchmark::plan
