// Actions and conditions in plain words: "Undo the 4 lid screws with the hexalobular driver 6."
#pragma once

#include "guide/document.hpp"
#include "language/spoken.hpp"
#include "model/model.hpp"

#include <map>

namespace matchmark::plan {

using language::spaced;

struct ReaderWords {
    const model::Model& model;
    const std::vector<model::Resource>& resources;
    std::map<model::ItemId, unsigned> numbers; // on the pictures
    const language::Language& language = language::english();
};

// The tools that an action takes, as the guide describes them.
std::vector<std::string> tools_used(const ReaderWords& words, const model::Action& action);

// One sentence, or two where a measure says what to do otherwise.
guide::Words sentence(const ReaderWords& words, const model::Action& action);

// "the cell plug connected"
std::string condition_words(const ReaderWords& words, const model::Condition& condition);

// "the cell", "The display shows"
std::string proof_words(const ReaderWords& words, const model::Proof& proof);

// What a tool, spare or supply is called; its name when it has no description. `article`: as in a
// sentence, where the language has an article there.
std::string resource_words(const ReaderWords& words, const model::Resource& resource,
                           bool article = false);

// "the 6 long screws" when the action says it of them; what a step is about when it has no title.
std::string title_words(const ReaderWords& words, const model::Action& action);
// "Turn on the air and start up the mains": those of the deeds that are named.
std::string title_words(const ReaderWords& words, const std::vector<model::Target>& deeds,
                        const std::vector<std::size_t>& named);

// "0.2 N·m, star pattern, 3 passes"; empty when nothing is declared.
std::string tightening_words(const language::Language& language,
                             const model::Tightening& tightening);

// Several items in an action, or several of one.
bool several(const model::Model& model, const model::Action& action);

} // namespace matchmark::plan
