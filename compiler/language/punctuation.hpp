// How a language sets its marks.
#pragma once

#include "language/language.hpp"

#include <string>

namespace matchmark::language {

// Between a term and what is said of it: ": ". French has a no-break space before it (Imprimerie
// nationale, Lexique des règles typographiques; from memory).
inline std::string colon(const Language& language) {
    return language.tag == "fr" ? "\u00A0: " : ": ";
}

} // namespace matchmark::language
