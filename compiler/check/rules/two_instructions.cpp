// Two things to do in one sentence.
#include "check/sentences.hpp"
#include "check/troubles.hpp"

#include <cctype>
#include <fmt/core.h>
#include <string_view>
#include <unordered_set>

namespace matchmark::check::rules {

namespace {

std::string plain(std::string word) {
    while (!word.empty() && std::ispunct(static_cast<unsigned char>(word.back())) != 0)
        word.pop_back();
    for (char& c : word)
        c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return word;
}

// Gathered when the first is asked for: few sentences join two things with `and`.
class Verbs {
public:
    explicit Verbs(const model::Model& model) : model_(model) {}

    bool has(std::string_view word) {
        if (known_.empty()) {
            known_ = {"replace", "measure", "mark", "dispose"};
            for (const auto& kind : model_.kinds) {
                for (const auto& verb : kind.verbs)
                    known_.insert(verb.name);
            }
        }
        return known_.contains(word);
    }

private:
    const model::Model& model_;
    std::unordered_set<std::string_view> known_;
};

// "Undo the screws and remove the lid": an instruction at the start, and another after `and` or
// `then`.
bool instructs_twice(const Sentence& sentence, Verbs& verbs) {
    for (std::size_t i = 1; i + 2 < sentence.words.size(); ++i) {
        const std::string joint = plain(sentence.words[i]);
        if (joint != "and" && joint != "then")
            continue;
        const std::string next = plain(sentence.words[i + 1]);
        const bool object =
            plain(sentence.words[i + 2]) == "the" || plain(sentence.words[i + 2]) == "it";
        if (object && verbs.has(next) && verbs.has(plain(sentence.words.front())))
            return true;
    }
    return false;
}

void find_two_instructions(const Walk& walk, std::vector<Diagnostic>& findings) {
    Verbs verbs(walk.model);
    for (const model::Prose* prose : procedural_prose(walk)) {
        for (const Sentence& sentence : sentences(walk.sources, *prose)) {
            if (!instructs_twice(sentence, verbs))
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
                            "more than one instruction in a sentence", find_two_instructions};

} // namespace matchmark::check::rules
