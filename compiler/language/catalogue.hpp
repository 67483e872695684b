// A catalogue of translations: what a gettext PO file holds.
#pragma once

#include "diagnostics/diagnostic.hpp"
#include "language/language.hpp"
#include "source/text.hpp"

#include <string>
#include <variant>
#include <vector>

namespace matchmark::language {

struct Reference {
    std::string file;
    std::size_t line = 0;
};

struct Message {
    std::string context;
    std::string one;                // the English text
    std::string many;               // its plural; empty: it has none
    std::vector<std::string> forms; // the translation; a form is empty while it is missing
    bool fuzzy = false;             // to be looked at by a person
    bool obsolete = false;
    std::vector<std::string> comments;  // the translator's own, line by line
    std::vector<std::string> explained; // what the program says of it, line by line
    std::vector<Reference> references;
    std::string previous;     // of a fuzzy one: the English text that was translated
    std::uint32_t offset = 0; // in the PO file: where its msgid stands
};

struct Catalogue {
    std::string language; // of its header; may be empty
    std::string header;   // the lines of the header, as they stand
    std::vector<Message> messages;
};

// Has it all forms of its translation?
bool is_translated(const Message& message);

// The one door to libgettextpo. What is wrong with the bytes is told by findings in `file`; with an
// error among them the catalogue is empty. Never throws; a file above 16 MB is refused.
Catalogue read_po(const SourceMap& sources, FileId file, std::vector<Diagnostic>& findings);

// The bytes of a PO file; empty when this system has no files in memory.
std::string write_po(const Catalogue& catalogue);

// A header for a language: "de", or empty for a template.
std::string po_header(const std::string& project, const std::string& tag);

// The translations that are whole: neither fuzzy, obsolete nor missing a form.
void add_to(Table& table, const Catalogue& catalogue);

// Translations of the messages of `found`, taken over from `old`: kept where context and text are
// the same; fuzzy where the text has changed (of the same context, or else the nearest); what is
// not found again stays, as obsolete.
Catalogue merged(const Catalogue& old, const Catalogue& found);

} // namespace matchmark::language
