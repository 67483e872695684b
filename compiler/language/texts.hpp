// Every text of a guide and its device that a reader may meet, with where it is found again.
#pragma once

#include "language/catalogue.hpp"
#include "model/model.hpp"

#include <string>
#include <vector>

namespace matchmark::language {

struct Text {
    std::string context; // as the catalogue has it: "step open text"
    std::string one;
    std::string many;                    // its plural; empty: it has none
    std::string about;                   // where it stands, for who translates it
    Span span;                           // where it is written
    std::vector<std::string> names = {}; // of the sources, in it: not to be translated
    bool built_in = false;               // the parts library's
    bool is_safety = false;              // a safety message
};

// What a reader of the procedure may meet; each text once in its context, in the order in which a
// reader meets it: guide, steps, device, kinds.
std::vector<Text> texts_of(const SourceMap& sources, const model::Model& model,
                           const model::Procedure& procedure);

// Everything of the parts library that may stand on a page.
std::vector<Text> library_texts(const SourceMap& sources, const model::Model& model);

// "a step's text", told in comments; places as "file:line".
Message message_of(const SourceMap& sources, const Text& text);

// The word that opens it in a file: note, caution.
const char* prose_word(model::ProseKind kind);

} // namespace matchmark::language
