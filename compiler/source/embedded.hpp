// What is carried inside the program: the parts library and the pages that explain the rules.
// Both are made from the files of the project when it is built.
#pragma once

#include <span>
#include <string_view>

namespace matchmark {

struct EmbeddedText {
    std::string_view name;
    std::string_view text;
};

// Every file of stdlib_parts/, by its path from the project's root ("stdlib_parts/fluids.mmk"),
// sorted.
std::span<const EmbeddedText> parts_library();

// The page of every rule, by the rule's name ("not-put-back"), sorted.
std::span<const EmbeddedText> rule_pages();

// Texts to start from, and examples of lines, by the name of the file in stdlib_parts/templates/
// ("device"), sorted. They are no part of the library: `{name}` and `{title}` stand in the
// former for what is being started.
std::span<const EmbeddedText> templates();

// The translations that come with the program, gettext PO files, by their path: the compiler's own
// sentences ("compiler/language/words/de.po") and the parts library's
// ("stdlib_parts/languages/de.po"), sorted.
std::span<const EmbeddedText> catalogues();

} // namespace matchmark
