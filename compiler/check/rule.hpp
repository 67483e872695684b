// A rule: a name, a severity, a line about it, and the function that looks at one walk of a guide
// over the bench.
//
// Each rule is one file in rules/, beside the page that explains it; the table of all rules is made
// from that folder.
#pragma once

#include "check/walk.hpp"
#include "diagnostics/diagnostic.hpp"

#include <span>

namespace matchmark::check {

struct Rule {
    const char* name; // kebab-case, as findings carry it
    const char*
        group; // what it is about: "held", "not back"; `explain GROUP` lists the rules of one
    Severity severity;
    const char* summary; // what it refuses, in a line
    void (*find)(const Walk& walk, std::vector<Diagnostic>& findings);
};

// In order of name.
std::span<const Rule* const> all_rules();

} // namespace matchmark::check
