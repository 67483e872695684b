// A language made of the catalogues inside the program and those that are handed to it.
#pragma once

#include "language/catalogue.hpp"

namespace matchmark::language {

// The compiler's own sentences and the parts library's, as far as they are translated; English has
// none. What is wrong with a catalogue inside the program is a fault of the build, and not told.
Catalogue built_in(std::string_view tag);

// `own`: the guide's catalogues, the last of which has the say.
Language language_of(std::string_view tag, const std::vector<const Catalogue*>& own);

} // namespace matchmark::language
