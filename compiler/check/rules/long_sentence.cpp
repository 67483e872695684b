// A sentence too long to be read once and done.
//
// Twenty words: the limit of controlled technical English for procedural sentences, as publicly
// restated.
#include "check/sentences.hpp"
#include "check/troubles.hpp"

#include <fmt/core.h>

namespace matchmark::check::rules {

namespace {

constexpr std::size_t most_words = 20;

void find_long_sentence(const Walk& walk, std::vector<Diagnostic>& findings) {
    for (const model::Prose* prose : procedural_prose(walk)) {
        for (const Sentence& sentence : sentences(walk.sources, *prose)) {
            if (sentence.words.size() <= most_words)
                continue;
            Diagnostic finding;
            finding.message = fmt::format("a sentence of {} words", sentence.words.size());
            finding.primary = sentence.span;
            finding.why = "with a tool in each hand, nobody reads a line twice";
            finding.help = fmt::format("cut it in two, each of {} words at most", most_words);
            findings.push_back(std::move(finding));
        }
    }
}

} // namespace

extern const Rule long_sentence;
const Rule long_sentence{"long-sentence", "prose", Severity::advice,
                         "a procedural sentence of more than 20 words", find_long_sentence};

} // namespace matchmark::check::rules
