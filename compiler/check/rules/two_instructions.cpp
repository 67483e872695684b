// Two things to do in one sentence.
#include "check/sentences.hpp"
#include "check/troubles.hpp"

#include <algorithm>
#include <cctype>
#include <fmt/core.h>
#include <string_view>

namespace matchmark::check::rules {

namespace {

std::string plain(std::string word) {
    while (!word.empty() && std::ispunct(static_cast<unsigned char>(word.back())) != 0)
        word.pop_back();
    for (char& c : word)
        c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return word;
}

bool is_verb(const model::Model& model, std::string_view word) {
    return word == "replace" || word == "measure" || word == "mark" || word == "dispose" ||
           std::any_of(model.kinds.begin(), model.kinds.end(), [&](const model::Kind& kind) {
               return model::find_verb(kind, word) != nullptr;
           });
}

// "Undo the screws and remove the lid": an instruction at the start, and another after `and` or
// `then`.
bool instructs_twice(const Sentence& sentence, const model::Model& model) {
    for (std::size_t i = 1; i + 2 < sentence.words.size(); ++i) {
        const std::string joint = plain(sentence.words[i]);
        if (joint != "and" && joint != "then")
            continue;
        const std::string next = plain(sentence.words[i + 1]);
        const bool object =
            plain(sentence.words[i + 2]) == "the" || plain(sentence.words[i + 2]) == "it";
        if (object && is_verb(model, next) && is_verb(model, plain(sentence.words.front())))
            return true;
    }
    return false;
}

void find(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const model::Prose* prose : procedural_prose(walk)) {
        for (const Sentence& sentence : sentences(walk.sources, *prose)) {
            if (!instructs_twice(sentence, walk.model))
                continue;
            Diagnostic finding;
            finding.message = "two instructions in one sentence";
            finding.primary = sentence.span;
            finding.why = "the second is missed when the first takes both hands";
            finding.help = "give each a sentence of its own";
            findings.push_back(std::move(finding));
        }
    }
}

} // namespace

extern const Rule two_instructions;
const Rule two_instructions{"two-instructions", "prose", Severity::advice,
                            "more than one instruction in a sentence", find};

} // namespace matchmark::check::rules
