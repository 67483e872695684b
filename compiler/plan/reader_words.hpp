// Actions and conditions in plain words: "Undo the 4 lid screws with the hexalobular driver 6."
#pragma once

#include "guide/document.hpp"
#include "model/model.hpp"

#include <map>

namespace matchmark::plan {

struct ReaderWords {
    const model::Model& model;
    const std::vector<model::Resource>& resources;
    std::map<model::ItemId, unsigned> numbers; // on the pictures
};

// The tools that an action takes, as the guide describes them.
std::vector<std::string> tools_used(const ReaderWords& words, const model::Action& action);

// One sentence, or two where a measure says what to do otherwise.
guide::Words sentence(const ReaderWords& words, const model::Action& action);

// "the cell plug connected"
std::string condition_words(const model::Model& model, const model::Condition& condition);

// "the cell", "The display shows"
std::string proof_words(const model::Model& model, const model::Proof& proof);

// What a tool, spare or supply is called; its name when it has no description.
std::string resource_words(const model::Resource& resource);

// "the 6 long screws" when the action says it of them; what a step is about when it has no title.
std::string title_words(const model::Model& model, const model::Action& action);

// "0.2 N·m, star pattern, 3 passes"; empty when nothing is declared.
std::string tightening_words(const model::Tightening& tightening);

// "battery-waste" -> "battery waste"
std::string spaced(std::string text);
// First letter large, where it is an ASCII letter.
std::string capital(std::string text);

} // namespace matchmark::plan
