// The fixed words of a form, in the language of its document.
#pragma once

#include "language/language.hpp"
#include "language/spoken.hpp"
#include "language/words.hpp"

#include <string>
#include <vector>

namespace matchmark::publish {

using language::Language;

// "Safety first"
std::string say(const Language& language, std::string_view english);

// "See step {step}": `step` in its place, as it is (it may be a link).
std::string say_with(const Language& language, std::string_view english, std::string_view place,
                     const std::string& filling);

// "eu only"; empty for what is for all.
std::string say_only(const Language& language, const std::vector<std::string>& variants);

// What an author's text or the library's says in English for want of a translation gets
// lang="en" in a page; in its title and in attributes the marks are taken out.
std::string with_languages_marked(const std::string& page);

// The same text without the marks.
std::string without_language_marks(std::string text);

// The script with its words in the language.
std::string script_in(const Language& language, std::string script);

} // namespace matchmark::publish
