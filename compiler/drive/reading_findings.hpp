// What `explain` says of the findings that come before any check: files that cannot be read, lines
// that cannot be understood, names that are not declared.
#pragma once

#include "diagnostics/diagnostic.hpp"

#include <span>
#include <string_view>

namespace matchmark::drive {

struct ReadingFinding {
    std::string_view name;
    Severity severity;
    std::string_view summary; // in a line
    std::string_view more;    // what to do about it
};

// The group that these make up beside those of the rules.
constexpr std::string_view reading_group = "reading";

// In order of name.
std::span<const ReadingFinding> reading_findings();

} // namespace matchmark::drive
