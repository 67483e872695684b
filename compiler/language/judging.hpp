// What is wrong with a guide's translation.
#pragma once

#include "language/texts.hpp"

namespace matchmark::language {

// One PO file, read.
struct OwnCatalogue {
    FileId file = Span::no_file;
    Catalogue catalogue;
};

// Texts that have no translation, one that waits for a person (fuzzy), or one that has lost a
// place, a number, its unit or a name: the last are errors, the others warnings. `program`: the
// translations that come with the program. `alone`: the catalogues are for these texts alone, so
// that what they hold beside them is stale.
std::vector<Diagnostic> judged(const std::vector<Text>& texts, const Catalogue& program,
                               const std::vector<OwnCatalogue>& own, bool alone);

// What a translation has lost: "the number 60 V", "the place {count}"; empty when nothing.
std::string lost_in(const std::string& english, const std::string& translation,
                    const std::vector<std::string>& names);

} // namespace matchmark::language
