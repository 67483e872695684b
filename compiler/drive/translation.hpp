// A guide's translation: its catalogues found, read and judged.
#pragma once

#include "drive/compilation.hpp"
#include "guide/document.hpp"
#include "language/judging.hpp"
#include "language/language.hpp"

#include <string>
#include <vector>

namespace matchmark::drive {

struct Translation {
    language::Language language; // what has no translation stands in it in English
    language::Language marked;   // the same, and says where that is
    std::vector<Diagnostic> findings;
    bool unreadable = false; // some catalogue could not be read from the disk
};

// `named`: the PO files that were asked for; without any, the file GUIDE.LANGUAGE.po beside the
// guide's is taken where there is one. `alone`: no other guide uses them. Files are added to the
// compilation's sources, so that findings can point into them.
Translation translated(Disk& disk, Compilation& done, const model::Procedure& procedure,
                       const std::string& tag, const std::vector<std::string>& named, bool alone);

// Every text that a reader of the procedure's pages, drawings and maps meets.
std::vector<language::Text> texts_met(const Compilation& done, const model::Procedure& procedure);

// The procedure with its steps called as the reader's guide calls them; for drawings, which have no
// words of their own for the steps that the compiler wrote.
model::Procedure as_told(const model::Procedure& procedure, model::VariantMask covered,
                         const guide::Document& document);

// "a/kettle.mmk" -> "a/kettle.de.po"
std::string catalogue_beside(const std::string& guide, const std::string& tag);

// "de, en, es"; for messages
std::string language_tags();

} // namespace matchmark::drive
